/**
 * The zone in which the work of an incident is counted. A determination whose place decides no zone falls back on the
 * offset in which somebody wrote the time; that says nothing about the day or the next change of clocks, so that of the
 * business is taken.
 * @param determined of the determination: IANA name or fixed offset
 * @example followUpZone('-05:00', 'America/Chicago') // 'America/Chicago'
 * @example followUpZone('America/Denver', 'America/Chicago') // 'America/Denver'
 */
export function followUpZone(determined: string | undefined, business: string): string {
  return determined === undefined || /^([+-]|Z$|UTC$)/.test(determined) ? business : determined;
}
