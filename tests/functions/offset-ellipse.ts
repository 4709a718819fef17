interface Offset {
  /** Length of the ellipse. */
  readonly edge: number;
  /** Area between the ellipse and the curve a width outside it. */
  readonly area: number;
}

/**
 * A strip outside an ellipse with half axes `a` and `b`, from the corners of two fine polygons. Both polygons have
 * their corners at the same parameters, so that for a smooth closed curve the sums are exact to rounding.
 */
export function offsetArea(a: number, b: number, width: number): Offset {
  const corners = 4096;
  let edge = 0;
  let inner = 0;
  let outer = 0;
  for (let i = 0; i < corners; i++) {
    const t = (2 * Math.PI * i) / corners;
    const [x, y] = [a * Math.cos(t), b * Math.sin(t)];
    const [dx, dy] = [-a * Math.sin(t), b * Math.cos(t)];
    const speed = Math.hypot(dx, dy);
    // Outer curve: the point moved along the normal (dy, −dx)/speed, its own speed from the curvature.
    const bend = (a * b) / speed ** 2;
    const grown = 1 + (width * bend) / speed;
    const [ox, oy] = [x + (width * dy) / speed, y - (width * dx) / speed];
    edge += speed;
    inner += x * dy - y * dx;
    outer += (ox * dy - oy * dx) * grown;
  }
  const part = (2 * Math.PI) / corners;
  return { edge: edge * part, area: ((outer - inner) / 2) * part };
}
