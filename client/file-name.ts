import type { Uri } from 'vscode';

/** The last part of a document's address, as people call it. */
export const fileName = ({ path }: Uri): string => path.slice(path.lastIndexOf('/') + 1);
