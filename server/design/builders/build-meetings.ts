/** What the edges of a sawn panel are fitted to. */
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { MeetsProperty, PanelDeclaration } from '../../../grammar/tree/panel-syntax.ts';
import type { Name } from '../../../grammar/tree/syntax-nodes.ts';
import type { DesignContext } from '../design-context.ts';
import type { Meeting } from '../design-model.ts';
import type { Definition } from '../names/name-index.ts';
import { propertyOf } from './pick-properties.ts';
import { readLength } from '../values/read-values.ts';

/** Every meeting of the panel; those that are broken, and second ones with the same thing, are left out. */
export function buildMeetings(
  panel: PanelDeclaration,
  meant: (name: Name) => Definition | null,
  context: DesignContext,
): Meeting[] {
  const meetings = panel.properties.filter((property) => property.kind === 'meets');
  checkSawn(panel, meetings, context);
  return meetings.flatMap(({ other, leave, range }, index) => {
    const left = readLength(leave, 'material left for fitting', 'positive', context);
    const definition = meant(other);
    const first = meetings.slice(0, index).find((earlier) => earlier.other.text === other.text);
    if (first) {
      const related = [{ range: first.range, message: 'It is said here first.' }];
      const message = `What is left where the panel meets \`${other.text}\` is said already. Keep one of the two.`;
      context.report(problemAt('repeatedProperty', other.range, message, related));
    } else if (definition?.kind === 'panel' && other.text === panel.name.text) {
      const message = `\`${other.text}\` cannot meet itself. Name what lies beside it in the work.`;
      context.report(problemAt('cyclicName', other.range, message));
    } else if (left !== null && definition && isMet(definition.kind)) {
      return [{ other: { kind: definition.kind, name: other.text }, leave: left, range }];
    }
    return [];
  });
}

const isMet = (kind: Definition['kind']): kind is Meeting['other']['kind'] =>
  kind === 'panel' || kind === 'board' || kind === 'pour' || kind === 'outline';

/** A framed panel is not sawn, so nothing is left. */
function checkSawn(panel: PanelDeclaration, [first]: readonly MeetsProperty[], context: DesignContext): void {
  if (!first || panel.incomplete || propertyOf(panel, 'edge')?.edge === 'sawn') return;
  const message = 'Only a sawn panel is left larger for fitting. Write `edge sawn`, or take this out.';
  context.report(problemAt('unexpectedWord', first.keyword, message));
}
