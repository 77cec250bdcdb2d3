/** The parts of the page, by the ids its markup gives them. */

function byId<Element extends HTMLElement>(id: string, type: new () => Element): Element {
  const element = document.getElementById(id);
  if (!(element instanceof type)) throw new Error(`The page has no ${type.name} called ${id}`);
  return element;
}

export type PageElements = ReturnType<typeof pageElements>;

/** Throws when the markup lacks a part. */
export const pageElements = () => ({
  views: byId('views', HTMLDivElement),
  zoom: byId('zoom', HTMLOutputElement),
  zoomIn: byId('zoom-in', HTMLButtonElement),
  zoomOut: byId('zoom-out', HTMLButtonElement),
  fit: byId('fit', HTMLButtonElement),
  measure: byId('measure', HTMLButtonElement),
  tabled: byId('tabled', HTMLButtonElement),
  lock: byId('lock', HTMLButtonElement),
  layerList: byId('layer-list', HTMLUListElement),
  saving: byId('saving', HTMLDetailsElement),
  saveSvg: byId('save-svg', HTMLButtonElement),
  savePdf: byId('save-pdf', HTMLButtonElement),
  savePng: byId('save-png', HTMLButtonElement),
  pictureScale: byId('picture-scale', HTMLSelectElement),
  copy: byId('copy', HTMLButtonElement),
  stale: byId('stale', HTMLParagraphElement),
  progress: byId('progress', HTMLParagraphElement),
  doing: byId('doing', HTMLSpanElement),
  stop: byId('stop', HTMLButtonElement),
  sheet: byId('sheet', HTMLElement),
  canvas: byId('drawing', HTMLCanvasElement),
  empty: byId('empty', HTMLParagraphElement),
  card: byId('card', HTMLDivElement),
  measured: byId('measured', HTMLOutputElement),
  summary: byId('summary', HTMLDivElement),
  find: byId('find', HTMLInputElement),
  table: byId('table', HTMLTableElement),
  announced: byId('announced', HTMLParagraphElement),
});
