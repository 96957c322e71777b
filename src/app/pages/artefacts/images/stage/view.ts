import type { Point } from "../../../../../show/artefacts/picture/points.ts";

/** How a picture lies in its frame: screen px to one of its pixels, and where its upper left corner is. */
export interface View {
  readonly zoom: number;
  readonly x: number;
  readonly y: number;
}

/** Width and height, in px. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

const farthest = 40;

/** The view that shows the whole picture, in the middle of its frame. */
export function wholeView(picture: Size, frame: Size): View {
  const zoom = Math.min(frame.width / picture.width, frame.height / picture.height, 4);
  return keptIn({ zoom, x: 0, y: 0 }, picture, frame);
}

/** A view nearer or farther by a factor, with the place under a point of the frame staying there. */
export function zoomedAt(view: View, by: number, at: Point, picture: Size, frame: Size): View {
  const least = Math.min(wholeView(picture, frame).zoom, 1);
  const zoom = Math.max(least, Math.min(farthest, view.zoom * by));
  const factor = zoom / view.zoom;
  return keptIn(
    { zoom, x: at.x - (at.x - view.x) * factor, y: at.y - (at.y - view.y) * factor },
    picture,
    frame,
  );
}

/** A view in which the picture is not lost: in the middle where there is room to spare, else over the whole frame. */
export function keptIn({ zoom, x, y }: View, picture: Size, frame: Size): View {
  const within = (start: number, length: number, room: number): number =>
    length <= room ? (room - length) / 2 : Math.max(room - length, Math.min(0, start));
  return {
    zoom,
    x: within(x, picture.width * zoom, frame.width),
    y: within(y, picture.height * zoom, frame.height),
  };
}

/** The view moved as little as it takes for a place in the picture to be well in sight. */
export function insight(view: View, at: Point, picture: Size, frame: Size): View {
  const seen = onFrame(at, view);
  const margin = Math.min(40, frame.width / 4, frame.height / 4);
  const short = (place: number, room: number): number =>
    place < margin ? margin - place : place > room - margin ? room - margin - place : 0;
  const [dx, dy] = [short(seen.x, frame.width), short(seen.y, frame.height)];
  return dx === 0 && dy === 0 ? view : keptIn({ ...view, x: view.x + dx, y: view.y + dy }, picture, frame);
}

/** Where a place in the picture is in the frame. */
export const onFrame = ({ x, y }: Point, view: View): Point => ({
  x: x * view.zoom + view.x,
  y: y * view.zoom + view.y,
});

/** The place in the picture under a point of the frame, to a tenth of its pixels; within the picture. */
export function inPicture({ x, y }: Point, view: View, picture: Size): Point {
  const tenth = (at: number, most: number): number => Math.round(Math.max(0, Math.min(most, at)) * 10) / 10;
  return {
    x: tenth((x - view.x) / view.zoom, picture.width),
    y: tenth((y - view.y) / view.zoom, picture.height),
  };
}
