/** Tells when the canvas changes its size, the screen its density, or the editor its theme. */

export interface ScreenListeners {
  readonly onSize: () => void;
  readonly onColours: () => void;
}

export function watchScreen(canvas: HTMLCanvasElement, { onSize, onColours }: ScreenListeners): void {
  new ResizeObserver(onSize).observe(canvas);
  new MutationObserver(onColours).observe(document.body, { attributes: true, attributeFilter: ['class'] });
  watchDensity(onSize);
}

/** The window may come to a screen of another pixel density, again and again. */
function watchDensity(onSize: () => void): void {
  window.matchMedia(`(resolution: ${window.devicePixelRatio}dppx)`).addEventListener(
    'change',
    () => {
      onSize();
      watchDensity(onSize);
    },
    { once: true },
  );
}
