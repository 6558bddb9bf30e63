const DAY_MS = 86_400_000;
const DATE_OF_INSTANT = /"(\d{4}-\d{2}-\d{2})(?=T\d{2}:\d{2})/g;

/**
 * A sample's instants moved by whole days, so that it happened within the last day and its clocks run. Text in,
 * text out: the layout of the document stays.
 * @example moveToNow('{ "occurredAt": "2026-07-06T14:30:00Z" }', Date.UTC(2026, 10, 25, 18))
 * // '{ "occurredAt": "2026-11-25T14:30:00Z" }'
 */
export function moveToNow(facts: string, now: number): string {
  const { occurredAt } = JSON.parse(facts) as { occurredAt: string };
  const days = Math.floor((now - Date.parse(occurredAt)) / DAY_MS);
  return facts.replaceAll(DATE_OF_INSTANT, (_all, date: string) => `"${moveDate(date, days)}`);
}

function moveDate(date: string, days: number): string {
  return new Date(Date.parse(date) + days * DAY_MS).toISOString().slice(0, 10);
}
