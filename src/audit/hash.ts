/**
 * A short mark of a text (53 bits, two interleaved multiplications with mixing at the end). It tells whether
 * something has changed; it is no seal against someone who wants two texts with the same mark.
 */
export function hashOf(text: string): string {
  let a = 0xdeadbeef;
  let b = 0x41c6ce57;
  for (let i = 0; i < text.length; i++) {
    const unit = text.charCodeAt(i);
    a = Math.imul(a ^ unit, 0x9e3779b1);
    b = Math.imul(b ^ unit, 0x5f356495);
  }
  a = Math.imul(a ^ (a >>> 16), 0x85ebca6b) ^ Math.imul(b ^ (b >>> 13), 0xc2b2ae35);
  b = Math.imul(b ^ (b >>> 16), 0x85ebca6b) ^ Math.imul(a ^ (a >>> 13), 0xc2b2ae35);
  return ((b >>> 0) * 0x200000 + (a >>> 11)).toString(36).padStart(11, "0");
}
