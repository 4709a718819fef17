/** placeholder */
export function convertUnit(value: number, from: string, to: string): number | string {
  return from === to ? value : `${from} to ${to}`;
}
