import { useEffect, useRef, useState } from 'preact/hooks';
import { useLocation, useSearch } from 'wouter-preact';
import { readQuery, type RegisterQuery, writeQuery } from './register-query.js';

const PATH = '/register';
/** People pause between words; a search for each letter would only be thrown away. */
const TYPING_MS = 250;

export interface QueryHands {
  readonly query: RegisterQuery;
  /** Goes to another query at once; the browser's way back leads to the one before. */
  readonly go: (query: RegisterQuery) => void;
  /** What stands in the search field. */
  readonly typed: string;
  /** Searches once the typing pauses. */
  readonly type: (words: string) => void;
}

/** The query of the register, which the address of the page carries, so that it can be sent, kept and gone back to. */
export function useQuery(): QueryHands {
  const [, navigate] = useLocation();
  const query = readQuery(useSearch());
  const inAddress = query.q ?? '';
  const [typed, setTyped] = useState(inAddress);
  const waiting = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const latest = useRef(query);
  latest.current = query;
  // The browser's way back, or a saved view, brings other words than those that were typed last.
  useEffect(() => setTyped(inAddress), [inAddress]);
  useEffect(() => () => clearTimeout(waiting.current), []);
  const go = (wanted: RegisterQuery, replace = false): void => {
    clearTimeout(waiting.current);
    navigate(`${PATH}${writeQuery(wanted)}`, { replace });
  };
  return {
    query,
    go: (wanted) => go(wanted),
    typed,
    type: (words) => {
      setTyped(words);
      clearTimeout(waiting.current);
      waiting.current = setTimeout(() => {
        const { after, q, ...rest } = latest.current;
        void [after, q];
        // Half a word is nothing to go back to.
        go(words.trim() === '' ? rest : { ...rest, q: words.trim() }, true);
      }, TYPING_MS);
    },
  };
}
