/** A canvas that lies under the graph: as sharp as the screen, drawn at most once a frame. */
export interface Sheet {
  /** Asks for the next frame to be drawn. */
  readonly ask: () => void;
  /** Draws at once, where no frame may come first. */
  readonly now: () => void;
  readonly end: () => void;
}

/** Size of the sheet in px of the page, and how many dots of the screen one px has. */
export interface Size {
  readonly width: number;
  readonly height: number;
  readonly dots: number;
}

/** Keeps a canvas as large as its place on the page and draws on it when asked. */
export function sheetOn(
  canvas: HTMLCanvasElement,
  draw: (context: CanvasRenderingContext2D, size: Size) => void,
  onSize: () => void,
): Sheet {
  const context = canvas.getContext("2d", { alpha: false });
  if (!context) throw new Error("The browser gives no canvas to draw on");
  let asked = 0;
  let size: Size = { width: 0, height: 0, dots: 1 };

  const now = (): void => {
    cancelAnimationFrame(asked);
    asked = 0;
    const [across, down] = [
      Math.round(size.width * devicePixelRatio),
      Math.round(size.height * devicePixelRatio),
    ];
    if (across === 0 || down === 0) return;
    if (canvas.width !== across || canvas.height !== down) {
      canvas.width = across;
      canvas.height = down;
    }
    size = { ...size, dots: devicePixelRatio };
    draw(context, size);
  };
  const ask = (): void => {
    if (asked === 0) asked = requestAnimationFrame(now);
  };
  const watch = new ResizeObserver(([entry]) => {
    if (!entry) return;
    size = { width: entry.contentRect.width, height: entry.contentRect.height, dots: devicePixelRatio };
    onSize();
    // In the same frame, since a resized canvas is empty.
    now();
  });
  watch.observe(canvas);
  return {
    ask,
    now,
    end: () => {
      watch.disconnect();
      cancelAnimationFrame(asked);
    },
  };
}
