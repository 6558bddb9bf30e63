import type { Session } from '../session/session-state.js';
import type { PageRoute } from './page-route.js';

/** Whether a page is shown to whoever is there: `yes`, after a sign-in, or not to this role. */
export function maySee({ who }: PageRoute, { me, device }: Session): 'yes' | 'sign-in' | 'no' {
  if (who.includes('anyone')) return 'yes';
  if (me !== null) return who.includes(me.role) ? 'yes' : 'no';
  return device !== null && who.includes('device') ? 'yes' : 'sign-in';
}
