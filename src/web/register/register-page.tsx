import { useMemo, useState } from 'preact/hooks';
import { Link } from 'wouter-preact';
import { Button } from '../look/button.js';
import { Field } from '../look/field.js';
import { Empty, ErrorState, KeptNote, Loading, Note } from '../look/notes.js';
import { Page } from '../look/page.js';
import { PrintedBy } from '../look/printed-by.js';
import { useSession } from '../session/session.js';
import { register as say } from '../words/register.js';
import { retention } from '../words/en/retention.js';
import { renewal } from '../words/renewal.js';
import { titles } from '../words/titles.js';
import { MakeFile } from './make-file.js';
import { PageTurns } from './page-turns.js';
import type { RegisterLine } from './register-answers.js';
import './register.css';
import { RegisterFilters, setWords } from './register-filters.js';
import { RegisterList } from './register-list.js';
import { pinsOf, RegisterMap } from './register-map.js';
import { type RegisterQuery, writeQuery } from './register-query.js';
import { RegisterTable } from './register-table.js';
import { SavedViews } from './saved-views.js';
import { useQuery } from './use-query.js';
import { type AskedRegister, useRegister } from './use-register.js';
import { useWide } from '../look/use-wide.js';

/** Every incident that the person may see: searched, narrowed, in order, page by page. */
export default function RegisterPage() {
  const { me } = useSession();
  const { query, go, typed, type } = useQuery();
  const asked = useRegister(query);
  const mayExport = me?.role === 'manager' || me?.role === 'administrator';
  return (
    <Page title={titles.register} lead={say.lead(asked.zone)}>
      <PrintedBy timeZone={asked.zone} />
      <p class="printed">{searchWords(query)}</p>
      <search class="register-search unprinted">
        <Field
          type="search"
          label={say.search}
          hint={say.searchHint}
          value={typed}
          onInput={type}
          autoComplete="off"
        />
        <RegisterFilters query={query} go={go} />
      </search>
      <p class="found" role="status">
        {asked.searching ? say.searching : asked.counts && say.count(asked.counts.found, asked.counts.all)}
      </p>
      <Found asked={asked} query={query} />
      <PageTurns query={query} next={asked.page?.next ?? null} go={go} />
      <SavedViews query={query} go={go} />
      {mayExport && <MakeFile query={query} zone={asked.zone} />}
      {mayExport && (
        <p class="links-line unprinted">
          <Link href="/renewal">{renewal.name}</Link>
          <Link href="/retention">{retention.title}</Link>
        </p>
      )}
    </Page>
  );
}

/** On paper, what the list is of. */
function searchWords(query: RegisterQuery): string {
  return [...(query.q === undefined ? [] : [`“${query.q}”`]), ...setWords(query)].join(' · ');
}

function Found({ asked, query }: { asked: AskedRegister; query: RegisterQuery }) {
  const { page, error, keptAt, again, zone, searching } = asked;
  const isSearch = writeQuery(query) !== '';
  if (error !== null) {
    return (
      <>
        {error.trouble === 'unreachable' && isSearch && <Note kind="offline">{say.offlineSearch}</Note>}
        <ErrorState error={error} again={again} />
      </>
    );
  }
  if (page === undefined) return <Loading />;
  if (page.items.length === 0) return <Nothing isSearch={isSearch} />;
  return (
    <div aria-busy={searching}>
      <KeptNote keptAt={keptAt} />
      <Lines lines={page.items} zone={zone} />
    </div>
  );
}

/** As a table where there is room for one; beside the map as a list, under the numbers of its pins. */
function Lines({ lines, zone }: { lines: readonly RegisterLine[]; zone: string }) {
  const wide = useWide();
  const [mapShown, setMapShown] = useState(false);
  const [picked, setPicked] = useState<string | null>(null);
  const numbers = useMemo(() => new Map(pinsOf(lines).map(({ id, number }) => [id, number])), [lines]);
  const map = { numberOf: (id: string) => numbers.get(id) ?? null, picked, pick: setPicked };
  return (
    <>
      <p class="unprinted">
        <Button onPress={() => setMapShown(!mapShown)}>{mapShown ? say.map.hide : say.map.show}</Button>
      </p>
      {mapShown ? (
        <div class="with-map">
          <RegisterMap lines={lines} picked={picked} pick={setPicked} />
          <RegisterList lines={lines} zone={zone} map={map} />
        </div>
      ) : wide ? (
        <RegisterTable lines={lines} zone={zone} />
      ) : (
        <RegisterList lines={lines} zone={zone} />
      )}
    </>
  );
}

function Nothing({ isSearch }: { isSearch: boolean }) {
  const isCounsel = useSession().me?.role === 'counsel';
  const none = isCounsel ? say.empty.counsel : say.empty.none;
  return (
    <Empty>
      <p>{isSearch ? say.empty.filtered : none}</p>
      {isSearch && <Link href="/register">{say.clear}</Link>}
      {!isSearch && !isCounsel && <Link href="/call">{say.empty.call}</Link>}
    </Empty>
  );
}
