/** The parts of the page, by the ids its markup gives them. */

function byId<Element extends HTMLElement>(id: string, type: new () => Element): Element {
  const element = document.getElementById(id);
  if (!(element instanceof type)) throw new Error(`The page has no ${type.name} called ${id}`);
  return element;
}

export interface PageElements {
  readonly panel: HTMLSelectElement;
  readonly zoom: HTMLOutputElement;
  readonly zoomIn: HTMLButtonElement;
  readonly zoomOut: HTMLButtonElement;
  readonly fit: HTMLButtonElement;
  readonly stale: HTMLParagraphElement;
  readonly canvas: HTMLCanvasElement;
  readonly empty: HTMLParagraphElement;
  readonly pointed: HTMLParagraphElement;
  readonly summary: HTMLDivElement;
  readonly kinds: HTMLUListElement;
}

/** Throws when the markup lacks a part. */
export function pageElements(): PageElements {
  return {
    panel: byId('panel', HTMLSelectElement),
    zoom: byId('zoom', HTMLOutputElement),
    zoomIn: byId('zoom-in', HTMLButtonElement),
    zoomOut: byId('zoom-out', HTMLButtonElement),
    fit: byId('fit', HTMLButtonElement),
    stale: byId('stale', HTMLParagraphElement),
    canvas: byId('drawing', HTMLCanvasElement),
    empty: byId('empty', HTMLParagraphElement),
    pointed: byId('pointed', HTMLParagraphElement),
    summary: byId('summary', HTMLDivElement),
    kinds: byId('kinds', HTMLUListElement),
  };
}
