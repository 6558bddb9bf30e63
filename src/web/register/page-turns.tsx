import { useRef } from 'preact/hooks';
import { Button } from '../look/button.js';
import { register as say } from '../words/register.js';
import { type RegisterQuery, withPart, writeQuery } from './register-query.js';

interface TurnsProps {
  readonly query: RegisterQuery;
  readonly next: string | null;
  readonly go: (query: RegisterQuery) => void;
}

/** From page to page. Back leads the way that was come; after a fresh start only to the first page. */
export function PageTurns({ query, next, go }: TurnsProps) {
  const search = writeQuery(withPart(query, {}));
  const trail = useRef<{ search: string; pages: string[] }>({ search, pages: [] });
  if (trail.current.search !== search) trail.current = { search, pages: [] };
  const { pages } = trail.current;
  if (query.after === undefined && next === null) return null;
  const turn = (after: string | undefined): void =>
    go(after === undefined || after === '' ? withPart(query, {}) : { ...query, after });
  return (
    <nav class="page-turns unprinted" aria-label={say.next}>
      {query.after !== undefined && <Button onPress={() => turn(undefined)}>{say.first}</Button>}
      {query.after !== undefined && pages.length > 0 && (
        <Button onPress={() => turn(pages.pop())}>{say.previous}</Button>
      )}
      {next !== null && (
        <Button
          look="main"
          onPress={() => {
            pages.push(query.after ?? '');
            turn(next);
          }}
        >
          {say.next}
        </Button>
      )}
    </nav>
  );
}
