/** The markup of the page of a comparison; the report comes later as a message. */
import type { PageContent } from '../page-markup.ts';

export const compareContent: PageContent = {
  title: 'What changed',
  body: `  <form id="looks" aria-label="How the versions are shown">
    <label><input type="radio" name="look" value="both" checked> laid over</label>
    <label><input type="radio" name="look" value="old"> old</label>
    <label><input type="radio" name="look" value="new"> new</label>
    <label><input type="radio" name="look" value="swipe"> swipe</label>
    <label class="swipe">old <input id="swipe" type="range" min="0" max="100" value="50" aria-label="How much of the old version shows"> new</label>
    <label>already cut <select id="cut" aria-label="What of the old version is already cut">
      <option value="nothing">does not count</option>
      <option value="all">all of the old version</option>
      <option value="list">what a list says …</option>
      <option id="listed" value="listed" hidden></option>
    </select></label>
    <button id="flip" type="button" title="Change between old and new (F)">Flip</button>
  </form>
  <p id="fault" role="status" hidden></p>
  <main id="report" aria-live="polite"><p>Comparing …</p></main>`,
};
