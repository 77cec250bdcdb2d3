/** The drawing board: clicks, cursor, measuring, layers, problems in their places, edits without a flicker, export. */
import { strict as assert } from 'node:assert';
import { type Case, it } from '../extension/case-list.ts';
import { answerFor, designText } from './answers.ts';
import type { PreviewPage } from './page-host.ts';
import { type Stage, withPage } from './stage.ts';

/** Equal pictures have equal sums. */
const canvasSum = (page: PreviewPage): Promise<number> =>
  page.page.evaluate(`(() => {
    const canvas = document.querySelector('#drawing');
    const { data } = canvas.getContext('2d').getImageData(0, 0, canvas.width, canvas.height);
    return data.reduce((sum, value, at) => (sum * 31 + value + at) % 2147483647, 0);
  })()`);

const box = `panel box { grid squares shape 4 x 2 cells edge sawn }`;
const squares = `strip ash { wood white_ash section face 4 depth 10 lengths 600 }
grid squares { square pitch 40 of ash }
${box}
`;

export const boardCases = (stage: Stage): Case[] => [
  it('a click on a drawn piece tells what it is and asks for its words', () =>
    withPage(stage, { texts: [squares] }, async (page) => {
      // a panel of 4 × 2 cells: two strips cross in the middle of the picture
      const { x, y } = await page.middle();
      await page.page.mouse.click(x, y);
      await page.settled();
      const [asked] = await page.sent('reveal');
      assert.ok(asked, 'no words asked for');
      assert.match(squares.slice(asked.words.start, asked.words.end), /square|ash/);
      assert.match(await page.text('card'), /^S\d? strip of squares/);
      assert.match(await page.text('announced'), /Number \d+ to make/);
      const marked = `document.querySelector('tr.lit button')?.dataset.mark ?? ''`;
      assert.match(await page.page.evaluate<string>(marked), /^S/);
      await page.page.keyboard.press('Escape');
      assert.equal(await page.page.evaluate(`document.querySelector('tr.lit')`), null);
    })),

  it('tells of a member of a frame what it is, how it ends and how many, and goes to its panel', () =>
    withPage(stage, { design: 'plaque.lap', view: 'members' }, async (page) => {
      await page.page.click('#table button[data-mark="F1"]');
      await page.settled();
      assert.match(await page.text('card'), /^F1 frame of screen.*Ends\nmitred 45°.*2 to make/s);
      const [asked] = await page.sent('reveal');
      const text = designText(stage.root, 'plaque.lap');
      assert.equal(text.slice(asked?.words.start, asked?.words.end), 'screen');
    })),

  it('a drag moves the picture and selects nothing', () =>
    withPage(stage, {}, async (page) => {
      const before = await canvasSum(page);
      const { x, y } = await page.middle();
      await page.page.mouse.move(x, y);
      await page.page.mouse.down();
      await page.page.mouse.move(x + 60, y + 20, { steps: 4 });
      await page.page.mouse.up();
      await page.settled();
      assert.notEqual(await canvasSum(page), before);
      assert.deepEqual(await page.sent('reveal'), []);
    })),

  it('the cursor in the text lights the pieces that its words make, and their rows', () =>
    withPage(stage, {}, async (page) => {
      const before = await canvasSum(page);
      const text = designText(stage.root, 'leaf.lap');
      await page.send({ type: 'cursor', offset: text.indexOf('piece arm') + 2 });
      assert.notEqual(await canvasSum(page), before);
      const lit = `[...document.querySelectorAll('tr.lit button')].map((button) => button.dataset.mark)`;
      assert.deepEqual(await page.page.evaluate(lit), ['A']);
      await page.send({ type: 'cursor', offset: 0 });
      assert.equal(await canvasSum(page), before);
    })),

  it('measures between two points, held by nodes: two neighbours are a pitch apart', () =>
    withPage(stage, { texts: [squares] }, async (page) => {
      await page.page.click('#measure');
      const { x, y } = await page.middle();
      const scale = await page.page.evaluate<number>(
        `parseFloat(document.querySelector('#zoom').textContent) / 100 * 96 / 25.4`,
      );
      await page.page.mouse.click(x + 3, y - 4);
      await page.page.mouse.move(x + 40 * scale + 4, y + 3);
      await page.page.mouse.click(x + 40 * scale + 4, y + 3);
      assert.equal(await page.text('measured'), 'Distance 40.0 mm, across 40.0, up 0.0');
      await page.page.keyboard.press('Escape');
      assert.equal(await page.text('measured'), '');
    })),

  it('measures with the keys alone', () =>
    withPage(stage, { texts: [squares] }, async (page) => {
      await page.page.focus('#drawing');
      await page.page.keyboard.press('m');
      await page.page.keyboard.press('ArrowRight');
      await page.page.keyboard.press('Enter');
      for (let step = 0; step < 20; step++) await page.page.keyboard.press('ArrowRight');
      await page.page.keyboard.press('Enter');
      assert.match(await page.text('measured'), /^Distance [1-9]\d*\.\d mm, across [1-9]/);
    })),

  it('switches a layer off and on', () =>
    withPage(stage, {}, async (page) => {
      const before = await canvasSum(page);
      await page.page.click('#layers summary');
      await page.page.click('#layer-list input[value^="whole"]');
      await page.settled();
      assert.notEqual(await canvasSum(page), before);
      const state = await page.page.evaluate<{ hidden: string[] }>('window.keptState');
      assert.deepEqual(state.hidden, ['whole bass']);
      await page.page.click('#layer-list input[value^="whole"]');
      await page.settled();
      assert.equal(await canvasSum(page), before);
    })),

  it('keeps the last good drawing over an error, marks what the words in question made, and says the line', () => {
    const good = designText(stage.root, 'leaf.lap');
    const broken = good.replace('from corner to hub, every corner', 'from cornr to hub, every corner');
    return withPage(stage, { texts: [good] }, async (page) => {
      const before = await canvasSum(page);
      await page.send({ type: 'show', answer: await answerFor([good, broken], null) });
      const line = good.slice(0, good.indexOf('piece arm')).split('\n').length;
      assert.match(await page.text('stale'), new RegExp(`^Last good drawing: the text has errors\\. Line ${line}: `));
      assert.notEqual(await canvasSum(page), before, 'nothing is marked in the drawing');
      await page.send({ type: 'show', answer: await answerFor([good], null) });
      assert.equal(await page.text('stale'), '');
      assert.equal(await canvasSum(page), before);
    });
  }),

  it('keeps zoom, selection and picture over an edit: no frame is empty', () =>
    withPage(stage, {}, async (page) => {
      await page.page.click('#table button[data-mark="A"]');
      await page.page.click('#zoom-in');
      await page.settled();
      const zoom = await page.text('zoom');
      await page.page.evaluate(`(() => {
        window.emptyFrames = 0;
        window.frames = 0;
        const canvas = document.querySelector('#drawing');
        const look = () => {
          const { data } = canvas.getContext('2d').getImageData(canvas.width / 2 - 40, canvas.height / 2 - 40, 80, 80);
          if (!data.some((value) => value > 0)) window.emptyFrames++;
          if (++window.frames < 40) requestAnimationFrame(look);
        };
        requestAnimationFrame(look);
      })()`);
      const text = designText(stage.root, 'leaf.lap').replace('copies 3', 'copies 4');
      await page.send({ type: 'show', answer: await answerFor([text], null) });
      await page.page.evaluate(`new Promise((done) => {
        const wait = () => window.frames >= 40 ? done() : requestAnimationFrame(wait);
        wait();
      })`);
      assert.equal(await page.page.evaluate('window.emptyFrames'), 0);
      assert.equal(await page.text('zoom'), zoom);
      assert.match(await page.text('card'), /^A arm of hemp/);
    })),

  it('says what is being worked on, and stops it', () =>
    withPage(stage, {}, async (page) => {
      await page.send({ type: 'progress', doing: 'Planning the cuts' });
      assert.equal(await page.text('doing'), 'Planning the cuts');
      await page.page.click('#stop');
      assert.equal((await page.sent('stop')).length, 1);
      await page.send({ type: 'progress', doing: null });
      assert.equal(await page.text('progress'), '');
    })),

  it('makes a picture of what is seen, at the scale chosen', () =>
    withPage(stage, {}, async (page) => {
      await page.page.click('#saving summary');
      await page.page.click('#save-png');
      await page.page.evaluate(`new Promise((done) => {
        const wait = () => window.sent.some(({ type }) => type === 'savePicture') ? done() : setTimeout(wait, 20);
        wait();
      })`);
      const [saved] = await page.sent('savePicture');
      const png = Buffer.from(saved?.png ?? '', 'base64');
      const { width, height } = await page.page.evaluate<{ width: number; height: number }>(`(() => {
        const { clientWidth: width, clientHeight: height } = document.querySelector('#drawing');
        return { width, height };
      })()`);
      // width and height stand in the first chunk of a PNG (ISO/IEC 15948), big-endian
      assert.deepEqual([png.readUInt32BE(16), png.readUInt32BE(20)], [2 * width, 2 * height]);
    })),
];
