/** Tells when the server has analysed a text anew. The client keeps one handler a message, so all listeners share this one. */
import { EventEmitter, type Event, type ExtensionContext, type Uri } from 'vscode';
import type { LanguageClient } from 'vscode-languageclient/node';
import { type AnalysedNotice, analysedNotification } from '../server/language/preview-messages.ts';

/** The address of each text after each of its analyses. */
export function analysedTexts(context: ExtensionContext, client: LanguageClient): Event<Uri> {
  const emitter = new EventEmitter<Uri>();
  context.subscriptions.push(
    emitter,
    client.onNotification(analysedNotification, ({ uri }: AnalysedNotice) => {
      emitter.fire(client.protocol2CodeConverter.asUri(uri));
    }),
  );
  return emitter.event;
}
