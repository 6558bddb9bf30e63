import { useRef } from 'preact/hooks';
import type { AskError } from '../ask/ask-error.js';
import { useAsk } from '../ask/use-ask.js';
import { ownZone } from '../look/tell-instant.js';
import { useSession } from '../session/session.js';
import type { CountAnswer, RegisterPageAnswer } from './register-answers.js';
import { askedOf, type RegisterQuery } from './register-query.js';

export interface AskedRegister {
  /** Undefined while the first page loads, and where it failed. */
  readonly page: RegisterPageAnswer | undefined;
  /** Another answer than the one shown is on its way. */
  readonly searching: boolean;
  readonly error: AskError | null;
  readonly keptAt: string | null;
  /** How many the search finds, and how many there are; null where that is not told. */
  readonly counts: { readonly found: number; readonly all: number } | null;
  readonly zone: string;
  readonly again: () => void;
}

const COUNT = '/api/register/count';

/**
 * What the register holds of a query. An answer belongs to its query, so that one that comes late is never shown for
 * another; meanwhile the page before stays. Without signal the first page, unsearched, is what this device kept.
 */
export function useRegister(query: RegisterQuery): AskedRegister {
  const { me } = useSession();
  const all = useAsk<CountAnswer>(me === null ? null : COUNT, { keep: true });
  const zone = all.data?.timeZone ?? ownZone();
  const asked = askedOf(query, zone);
  const filter = new URLSearchParams(asked).toString();
  const { order, after } = query;
  const whole = new URLSearchParams({
    ...asked,
    ...(order !== undefined && { order }),
    ...(after !== undefined && { after }),
  }).toString();
  // The zone says where a day begins, so that days wait for it.
  const waits = all.loading && (query.from ?? query.until) !== undefined;
  const path = withQuery('/api/register', whole);
  const page = useAsk<RegisterPageAnswer>(me === null || waits ? null : path, { keep: whole === '' });
  const found = useAsk<CountAnswer>(me === null || waits || filter === '' ? null : withQuery(COUNT, filter));
  const shown = useRef<RegisterPageAnswer | undefined>(undefined);
  if (page.data !== undefined) shown.current = page.data;
  const counted = filter === '' ? all.data?.count : found.data?.count;
  // A figure stands only above the list that it counts.
  const count = page.data === undefined ? undefined : counted;
  return {
    page: page.error === null ? shown.current : page.data,
    searching: page.loading && shown.current !== undefined,
    error: page.error,
    keptAt: page.keptAt,
    counts: count === undefined || all.data === undefined ? null : { found: count, all: all.data.count },
    zone,
    again: () => {
      page.again();
      if (all.error !== null) all.again();
      if (found.error !== null) found.again();
    },
  };
}

const withQuery = (path: string, query: string): string => (query === '' ? path : `${path}?${query}`);
