/** Which folder may import which: one ordered list, turned into ESLint blocks. Borders are regular expressions on the import path. */

/** The line of the server: a folder may import itself and the folders before it. */
const line = ['geometry', 'design', 'words', 'lattice', 'shop', 'drawing', 'compare', 'machine', 'language', 'cli'];

/** The rooms of the grammar: likewise. */
const grammarLine = ['tree', 'problems', 'vocabulary', 'rules', 'phrases', 'reading', 'writing'];

/** The folders at the end of the line, where files, clocks and the solver are allowed: the doors, and what both need of the machine. */
const outside = ['machine', 'language', 'cli'];

const up = '^(\\.\\./)+';
const ban = (regex, message) => ({ regex, message });

const nodeOnlyOutside = ban(
  '^node:',
  'Files, clocks and processes belong to the doors, server/cli and server/language, and to server/machine.',
);
const solverOnlyInMachine = ban(
  '^highs$',
  'The solver belongs to server/machine; what asks it is given a LinearSolver.',
);
const protocolOnlyInLanguage = ban(
  '^vscode-languageserver|^vscode-jsonrpc',
  'The protocol belongs to server/language, outside features/.',
);
const editorOnlyInClient = ban('^vscode$|^vscode-languageclient', 'The editor belongs to client/.');
const noneOfTheOtherDoor = ban(`${up}language/`, 'What both doors need lies in server/machine.');
const noClient = ban(`${up}client/`, 'Nothing imports the client.');

function block(files, bans, ignores = []) {
  return { files, ignores, rules: { 'no-restricted-imports': ['error', { patterns: bans }] } };
}

function laterThan(folder) {
  const later = line.slice(line.indexOf(folder) + 1);
  if (later.length === 0) return [];
  return [ban(`${up}(${later.join('|')})/`, `server/${folder} comes before ${later.join(', ')} in the line.`)];
}

function folderBlock(folder) {
  const bans = [...laterThan(folder), noClient, editorOnlyInClient];
  if (folder === 'geometry') bans.push(ban(`${up}grammar/`, 'Geometry knows no text.'));
  if (!outside.includes(folder)) {
    bans.push(
      nodeOnlyOutside,
      protocolOnlyInLanguage,
      ban('/(analyse|plan-design)\\.ts$', 'analyse.ts and plan-design.ts walk the line from outside.'),
    );
  }
  if (folder !== 'machine') bans.push(solverOnlyInMachine);
  if (folder === 'machine') bans.push(protocolOnlyInLanguage);
  if (folder === 'cli') bans.push(protocolOnlyInLanguage, noneOfTheOtherDoor);
  return block([`server/${folder}/**/*.ts`], bans);
}

const grammarBans = [
  ban(`${up}(server|client)/`, 'The grammar imports nothing of the server or the client.'),
  nodeOnlyOutside,
  protocolOnlyInLanguage,
  editorOnlyInClient,
];

function roomBlock(room, index) {
  const later = grammarLine.slice(index + 1);
  const bans =
    later.length > 0 ? [ban(`${up}(${later.join('|')})/`, `grammar/${room} comes before ${later.join(', ')}.`)] : [];
  return block([`grammar/${room}/**/*.ts`], [...grammarBans, ...bans]);
}

export const importBorders = [
  block(['grammar/*.ts'], grammarBans),
  ...grammarLine.map(roomBlock),
  ...line.map(folderBlock),
  block(
    ['server/language/features/**/*.ts'],
    [...laterThan('language'), noClient, editorOnlyInClient, nodeOnlyOutside, protocolOnlyInLanguage],
  ),
  block(
    ['server/*.ts'],
    [
      ban(`^\\./(${outside.join('|')})/`, 'What walks the line from outside is given what it needs of the machine.'),
      noClient,
      editorOnlyInClient,
      nodeOnlyOutside,
      protocolOnlyInLanguage,
      solverOnlyInMachine,
    ],
    ['server/main.ts'],
  ),
  block(['server/main.ts'], [noClient, editorOnlyInClient, nodeOnlyOutside, protocolOnlyInLanguage]),
  block(
    ['client/**/*.ts'],
    [
      ban(
        `${up}(grammar/|server/(?!drawing/drawing\\.ts$|words/figures\\.ts$|geometry/tolerance\\.ts$|language/(preview|compare)-messages\\.ts$))`,
        'The client knows only what the server tells it (drawing.ts, preview-messages.ts, compare-messages.ts), how figures are written and the tolerances.',
      ),
    ],
  ),
];
