import type { Point } from "./mark";

/** What has to be seen, in the units of the thing itself. */
export interface Extent {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

/** A place on the drawing. */
export interface Place {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  /** Most height that may be used. */
  readonly height: number;
}

/** A drawing to scale: the same scale both ways, up is up. */
export interface ToScale {
  /** Drawing units for one unit of the thing. */
  readonly scale: number;
  readonly at: (x: number, y: number) => Point;
  readonly bottom: number;
  /** Says scale and origin, so that a point can be measured back. */
  readonly marks: Readonly<Record<string, string>>;
}

export function toScale(extent: Extent, place: Place): ToScale {
  const wide = extent.right - extent.left;
  const high = extent.top - extent.bottom;
  const scale = Math.min(place.width / wide, place.height / high);
  const x0 = place.x + (place.width - wide * scale) / 2 - extent.left * scale;
  const y0 = place.y + extent.top * scale;
  return {
    scale,
    at: (x, y) => ({ x: x0 + x * scale, y: y0 - y * scale }),
    bottom: place.y + high * scale,
    marks: { "data-scale": String(scale), "data-origin": `${x0} ${y0}` },
  };
}
