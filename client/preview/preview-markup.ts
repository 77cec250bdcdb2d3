/** The markup of the preview's page; every part that the script fills has an id. */
import type { PageContent } from '../page-markup.ts';

export const previewContent: PageContent = {
  title: 'Halflap preview',
  body: `  <nav aria-label="Views"><div id="views" role="tablist" aria-label="Views of the design"></div></nav>
  <header aria-label="Drawing board">
    <h1 class="spoken">Halflap preview</h1>
    <div class="tools" role="group" aria-label="Size">
      <button id="zoom-out" type="button" title="Zoom out (-)" aria-label="Zoom out">&minus;</button>
      <output id="zoom" title="Size on screen against real size" aria-label="Size on screen"></output>
      <button id="zoom-in" type="button" title="Zoom in (+)" aria-label="Zoom in">+</button>
      <button id="fit" type="button" title="Fit the whole drawing (0)">Fit</button>
    </div>
    <div class="tools" role="group" aria-label="Tools">
      <button id="measure" type="button" aria-pressed="false" title="Measure between two points (M)">Measure</button>
      <button id="tabled" type="button" aria-pressed="false" title="The table in place of the picture (T)">Table</button>
      <details id="layers"><summary title="Switch layers on and off">Layers</summary><ul id="layer-list" aria-label="Layers"></ul></details>
      <details id="saving">
        <summary title="Save or copy what is seen">Save</summary>
        <div class="menu">
          <button id="save-svg" type="button">Drawing as SVG, full size</button>
          <button id="save-pdf" type="button">Drawing as PDF, full size</button>
          <label>Picture at <select id="picture-scale" aria-label="Scale of the picture"><option value="1">1×</option><option value="2" selected>2×</option><option value="4">4×</option></select></label>
          <button id="save-png" type="button">Picture as PNG</button>
          <button id="copy" type="button">Copy picture</button>
        </div>
      </details>
      <button id="lock" type="button" aria-pressed="false" title="Stay with this file when another is edited">Lock</button>
    </div>
  </header>
  <p id="stale" role="status" hidden></p>
  <p id="progress" role="status" hidden><span id="doing"></span> <button id="stop" type="button">Stop</button></p>
  <main><div id="sheet" role="tabpanel" tabindex="-1">
    <section id="stage" aria-label="Picture">
      <canvas id="drawing" tabindex="0" role="img" aria-describedby="summary"></canvas>
      <p id="empty" hidden></p>
      <div id="card" hidden></div>
      <output id="measured" aria-live="polite" aria-label="Measured"></output>
    </section>
    <section id="ledger" aria-label="Figures">
      <div id="summary" aria-live="polite"></div>
      <label for="find" class="spoken">Find a mark or piece</label>
      <input id="find" type="search" placeholder="Find a mark or piece" autocomplete="off" spellcheck="false">
      <div id="table-frame" tabindex="0" role="region" aria-label="Table of the view"><table id="table"></table></div>
    </section>
  </div></main>
  <p id="announced" class="spoken" role="status"></p>`,
};
