/**
 * By how many seconds the clock of this device is ahead of the service's, as the last answer told; negative when it is
 * behind, null before the first answer. HTTP dates have whole seconds, and an answer travels: it is right to a second or two.
 */
let offsetS: number | null = null;

const KEPT_AS = 'desk-clock-offset';

/** @param date the Date header of an answer */
export function noteServerTime(date: string | null): void {
  const server = Date.parse(date ?? '');
  if (Number.isNaN(server)) return;
  offsetS = Math.round((Date.now() - server) / 1000);
  localStorage.setItem(KEPT_AS, String(offsetS));
}

export function clockOffsetS(): number | null {
  const kept = localStorage.getItem(KEPT_AS);
  return offsetS ?? (kept === null ? null : Number(kept));
}
