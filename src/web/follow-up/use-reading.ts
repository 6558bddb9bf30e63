import { useSearchParams } from 'wouter-preact';

/** The three ways to read the work. */
export const WAYS = ['time', 'person', 'incident'] as const;
export type Way = (typeof WAYS)[number];

export const SHOWS = ['all', 'mine', 'overdue'] as const;
export type Shown = (typeof SHOWS)[number];

export interface Reading {
  readonly way: Way;
  readonly shown: Shown;
  readonly read: (change: { readonly by?: Way; readonly show?: Shown }) => void;
}

const KEPT = { by: 'desk-follow-up-by', show: 'desk-follow-up-show' } as const;

/** How the work is read: as the address says, else as it was last read on this device. */
export function useReading(): Reading {
  const [search, setSearch] = useSearchParams();
  const chosen = (name: keyof typeof KEPT): string =>
    search.get(name) ?? localStorage.getItem(KEPT[name]) ?? '';
  const way = WAYS.find((one) => one === chosen('by')) ?? 'time';
  const shown = SHOWS.find((one) => one === chosen('show')) ?? 'all';
  return {
    way,
    shown,
    read: (change) => {
      const { by, show } = { by: way, show: shown, ...change };
      localStorage.setItem(KEPT.by, by);
      localStorage.setItem(KEPT.show, show);
      setSearch({ by, show }, { replace: true });
    },
  };
}
