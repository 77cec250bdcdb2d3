/** Packs the extension as it is published: the files that .vscodeignore lets through, in a .vsix, which is a zip file. */
import fs from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';

/** Writes the package of the checkout `root` to `file`. `host` is the folder of the test host, which brings the zip writer. */
export async function packExtension({ root, host, file }) {
  const { ZipFile } = createRequire(path.join(host, 'v1.100/package.json'))('yazl');
  const zip = new ZipFile();
  for (const name of packedFiles(root)) zip.addFile(path.join(root, name), `extension/${name}`);
  zip.addBuffer(Buffer.from(manifestOf(root)), 'extension.vsixmanifest');
  zip.addBuffer(Buffer.from(contentTypes), '[Content_Types].xml');
  zip.end();
  const target = fs.createWriteStream(file);
  zip.outputStream.pipe(target);
  await new Promise((resolve, reject) => target.on('close', resolve).on('error', reject));
}

/** Files by their paths from `root`. The last rule that matches decides; only what is let in by one is looked for. */
export function packedFiles(root) {
  const rules = fs
    .readFileSync(path.join(root, '.vscodeignore'), 'utf8')
    .split('\n')
    .filter((line) => line !== '')
    .map((line) => ({ lets: line.startsWith('!'), form: formOf(line.replace(/^!/, '')) }));
  const folders = ['.', 'client', 'dist', 'grammar', 'samples', 'server'];
  const names = folders.flatMap((folder) =>
    fs
      .readdirSync(path.join(root, folder), { withFileTypes: true, recursive: folder !== '.' })
      .filter((entry) => entry.isFile())
      .map((entry) => path.relative(root, path.join(entry.parentPath ?? entry.path, entry.name))),
  );
  return names.filter((name) => rules.findLast(({ form }) => form.test(name))?.lets === true).sort();
}

/** A pattern of .vscodeignore: `**` stands for any folders, `*` for part of a name. */
function formOf(pattern) {
  const parts = pattern.split(/(\*\*|\*)/).map((part) => {
    if (part === '**') return '.*';
    return part === '*' ? '[^/]*' : part.replace(/[.\\+?^${}()|[\]]/g, '\\$&');
  });
  return new RegExp(`^${parts.join('')}$`);
}

const contentTypes = `<?xml version="1.0" encoding="utf-8"?>
<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension=".json" ContentType="application/json"/><Default Extension=".vsixmanifest" ContentType="text/xml"/></Types>
`;

function manifestOf(root) {
  const { name, version, publisher } = JSON.parse(fs.readFileSync(path.join(root, 'package.json'), 'utf8'));
  return `<?xml version="1.0" encoding="utf-8"?>
<PackageManifest Version="2.0.0" xmlns="http://schemas.microsoft.com/developer/vsx-schema/2011">
  <Metadata><Identity Language="en-US" Id="${name}" Version="${version}" Publisher="${publisher}"/></Metadata>
  <Installation><InstallationTarget Id="Microsoft.VisualStudio.Code"/></Installation>
  <Dependencies/>
  <Assets><Asset Type="Microsoft.VisualStudio.Code.Manifest" Path="extension/package.json" Addressable="true"/></Assets>
</PackageManifest>
`;
}
