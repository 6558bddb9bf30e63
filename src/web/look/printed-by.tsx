import { useSession } from '../session/session.js';
import { common } from '../words/common.js';
import { tellInstant } from './tell-instant.js';
import { useNow } from './use-now.js';

/** On paper alone: when it was printed and by whom. */
export function PrintedBy({ timeZone }: { timeZone?: string }) {
  const { me, device } = useSession();
  const now = useNow();
  const who = me === null ? (device?.name ?? common.deskName) : `${me.name}, ${common.roles[me.role]}`;
  return (
    <p class="printed">{common.printed(tellInstant(new Date(now).toISOString(), timeZone, now), who)}</p>
  );
}
