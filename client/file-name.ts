/** What people call a file. */
import type { Uri } from 'vscode';

/** The last part of its address. */
export const fileName = ({ path }: Uri): string => path.slice(path.lastIndexOf('/') + 1);
