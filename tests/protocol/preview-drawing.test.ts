/** The drawing that the preview asks for: of the panel wanted, of the latest text, and the last good one over an error. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { DrawingAnswer } from '../../server/language/preview-messages.ts';
import { disc } from './disc.ts';
import { rangeOf } from './places.ts';
import { ServerSession } from './server-session.ts';

const twoPanels = `${disc}
panel tray {
  grid mesh
  shape 120 x 90
  edge framed
  fill triangle with hemp of bass
}
`;
let session: ServerSession;

beforeAll(async () => {
  session = await ServerSession.start('stdio');
});
afterAll(async () => {
  await session.stop();
});

const drawingOf = (uri: string, view: string | null = null): Promise<DrawingAnswer> =>
  session.ask<DrawingAnswer>('halflap/drawing', { uri, view });

const viewIds = ({ views }: DrawingAnswer): string[] => views.map(({ id }) => id);

/** Placements drawn in the layers of one kind. */
function drawn({ drawing }: DrawingAnswer, layerKind: string): number {
  const layers = drawing?.layers.filter(({ kind }) => kind === layerKind) ?? [];
  return layers.flatMap(({ kinds }) => kinds).reduce((total, { placements }) => total + placements.length / 3, 0);
}

describe('the drawing', () => {
  it('places every piece that is counted', async () => {
    const uri = 'file:///counted.lap';
    await session.open(uri, disc);
    const answer = await drawingOf(uri);
    expect(answer).toMatchObject({ version: 1, view: 'panel window', stale: false, problems: [] });
    expect(viewIds(answer)).toEqual(['panel window', 'pieces', 'strips', 'settings', 'steps']);
    expect([drawn(answer, 'piece'), drawn(answer, 'trimmed')]).toEqual([276, 66]);
    expect(answer.summary.length).toBeGreaterThan(0);
  });

  it('is of the view wanted, and of the first where that is not there', async () => {
    const uri = 'file:///two.lap';
    await session.open(uri, twoPanels);
    const tray = await drawingOf(uri, 'panel tray');
    expect(tray).toMatchObject({ view: 'panel tray' });
    expect(viewIds(tray).slice(0, 2)).toEqual(['panel window', 'panel tray']);
    expect(await drawingOf(uri, 'panel door')).toMatchObject({ view: 'panel window' });
  });

  it('follows the text', async () => {
    const uri = 'file:///follows.lap';
    await session.open(uri, disc);
    await session.change(uri, 2, '80mm', rangeOf(disc, '150mm'));
    const answer = await drawingOf(uri);
    expect(answer.version).toBe(2);
    expect(drawn(answer, 'piece')).toBeLessThan(276);
  });

  it('stays the last good one while the text has an error, says so, and recovers', async () => {
    const uri = 'file:///stale.lap';
    await session.open(uri, disc);
    const good = await drawingOf(uri);
    const here = rangeOf(disc, 'with hemp of');
    await session.change(uri, 2, 'with of', here);
    const stale = await drawingOf(uri);
    expect(stale).toMatchObject({ version: 2, stale: true, view: 'panel window', drawing: good.drawing });
    expect(stale.problems[0]?.line).toBe(here.start.line);
    await session.change(uri, 3, disc);
    expect(await drawingOf(uri)).toMatchObject({ version: 3, stale: false, problems: [] });
  });

  it('is what can be laid out, called stale, where the text never was without an error', async () => {
    const uri = 'file:///never.lap';
    await session.open(uri, twoPanels.replace('120 x 90', '120 x'));
    const answer = await drawingOf(uri);
    expect(answer).toMatchObject({ stale: true, view: 'panel window' });
    expect(drawn(answer, 'piece')).toBe(276);
  });

  it('of frames and bands shows every member, and lists what it is part of, its ends and how many', async () => {
    const uri = 'file:///framed.lap';
    const framed = twoPanels.replace('edge framed', 'edge framed\n  frame { of rail  groove 4 }');
    const thin = 'strip thin { wood walnut  section face 0.8 depth 12 }\nstrip rail { section face 20 depth 12 }';
    const text = `${framed}${thin}\nband rim { around window  of thin }\n`;
    await session.open(uri, text);
    const answer = await drawingOf(uri, 'members');
    expect(answer).toMatchObject({ view: 'members', stale: false });
    const rows = answer.table?.rows ?? [];
    expect(new Set(rows.map(({ cells: [, part] }) => part))).toEqual(new Set(['frame of tray', 'band rim']));
    // every lamination of the round rim once, every member of the frame once
    expect(drawn(answer, 'strip')).toBe(rows.length);
    for (const { mark } of rows) expect(answer.cards.find((card) => card.mark === mark)?.facts).toBeDefined();
    const card = answer.cards.find(({ heading }) => heading === 'band rim');
    expect(card?.facts.map(({ name }) => name)).toEqual(expect.arrayContaining(['Length', 'Width', 'Ends', 'Number']));
    expect(text.slice(card?.words.start, card?.words.end)).toBe('rim');
    expect(rows.find(({ cells: [, part] }) => part === 'frame of tray')?.cells).toContain('mitred 45°');
  });

  it('has trimmed pieces and slivers in layers of their own', async () => {
    const uri = 'file:///slivers.lap';
    await session.open(uri, disc.replace('edge sawn', 'edge sawn\n  sliver 6'));
    const answer = await drawingOf(uri);
    const names = answer.drawing?.layers.map(({ name }) => name) ?? [];
    expect(names).toContain('trimmed bass');
    expect(names.at(-1)).toBe('slivers');
    expect(answer.summary.at(-1)).toBe(`${drawn(answer, 'note')} slivers, ringed: less than 6 mm is kept of each`);
  });

  it('is written as a file at full size where a view has one', async () => {
    const uri = 'file:///saved.lap';
    await session.open(uri, disc);
    const file = async (view: string, form: string): Promise<string | null> => {
      const content = await session.ask<string | null>('halflap/file', { uri, view, as: form });
      return content && Buffer.from(content, 'base64').toString('latin1');
    };
    expect(await file('panel window', 'svg')).toMatch(/^<svg [^>]*width="[\d.]+mm"/);
    expect(await file('pieces', 'pdf')).toMatch(/^%PDF-1\.\d/);
    expect(await file('settings', 'svg')).toBeNull();
  });
});
