import type { PageProps } from '../app/page-route.js';
import { ErrorState, Loading } from '../look/notes.js';
import { Page } from '../look/page.js';
import { closingCount as say } from '../words/closing-count.js';
import { BeginCount } from './begin-count.js';
import { CountLinks } from './count-links.js';
import { CountSheet } from './count-sheet.js';
import './outing.css';
import { useArrivals } from './outing-queue.js';
import { useStandingInstead } from './standing-instead.js';
import { useCount } from './use-count.js';

/** The count at closing. */
export default function ClosingCountPage({ params: { id } }: PageProps) {
  return id === undefined ? <BeginCount /> : <OneCount id={id} />;
}

function OneCount({ id }: { id: string }) {
  const { here, error, loading, keptAt, again } = useCount(id);
  useArrivals();
  useStandingInstead(id, (standing) => `/out-and-back/closing-count/${standing}`);
  if (here !== undefined) return <CountSheet here={here} keptAt={keptAt} />;
  return (
    <Page title={say.title}>
      {loading ? (
        <Loading />
      ) : error === null ? (
        <p>{say.unknownHere}</p>
      ) : (
        <ErrorState error={error} again={again} />
      )}
      <CountLinks />
    </Page>
  );
}
