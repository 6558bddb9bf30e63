import { casualtyTypeSlugs } from '../../../shared/vocabulary/casualty-types.js';
import { useAskAll } from '../ask/use-ask-all.js';
import { Button } from '../look/button.js';
import { Field } from '../look/field.js';
import { Select } from '../look/select.js';
import { useStations } from '../lists/use-stations.js';
import { useSession } from '../session/session.js';
import { register as say } from '../words/register.js';
import { type FilterName, type RegisterQuery, withPart } from './register-query.js';

interface FiltersProps {
  readonly query: RegisterQuery;
  readonly go: (query: RegisterQuery) => void;
}

/** What narrows the list, and its order. Each takes effect when it is chosen. */
export function RegisterFilters({ query, go }: FiltersProps) {
  const { me } = useSession();
  // The fleet is no matter of counsel's, whose search finds a craft by its name.
  const isCounsel = me?.role === 'counsel';
  const craft = useAskAll<{ readonly unitName?: string }>(isCounsel ? null : '/api/craft', { keep: true });
  const stations = useStations(!isCounsel).map(({ label }) => label);
  const names = (craft.data ?? []).flatMap(({ unitName }) => (unitName === undefined ? [] : [unitName]));
  const set = (name: FilterName | 'order', value: string): void => {
    const { [name]: before, ...rest } = query;
    void before;
    go(withPart(rest, value === '' ? {} : { [name]: value }));
  };
  const select = (
    name: keyof typeof say.filters,
    words: Readonly<Record<string, string>>,
    none = say.any,
  ) => (
    <Select
      label={say.filters[name]}
      value={query[name] ?? ''}
      none={none}
      optional
      groups={[{ options: Object.entries(words).map(([value, label]) => ({ value, label })) }]}
      onChoose={(value) => set(name, value)}
    />
  );
  const day = (name: 'from' | 'until') => (
    <Field
      type="date"
      label={say.filters[name]}
      value={query[name] ?? ''}
      onInput={(value) => set(name, value)}
    />
  );
  return (
    <details class="filters unprinted">
      <summary>{say.narrow(setWords(query))}</summary>
      <div class="filter-grid">
        {select('status', say.statuses)}
        {select('reports', say.standings)}
        {select('outcome', say.outcomes)}
        {select('hurt', say.harms)}
        {!isCounsel && select('craft', listed(names, query.craft))}
        {!isCounsel && select('station', listed(stations, query.station))}
        {select('casualty', casualties())}
        {day('from')}
        {day('until')}
        {select('order', latestLess(say.orders), say.orders.latest)}
      </div>
      {setWords(query).length > 0 && (
        <Button onPress={() => go(query.order === undefined ? {} : { order: query.order })}>
          {say.clear}
        </Button>
      )}
    </details>
  );
}

/** What narrows the list now, in words, so that a folded filter hides nothing. */
export function setWords({
  status,
  reports,
  outcome,
  hurt,
  craft,
  station,
  casualty,
  from,
  until,
}: RegisterQuery): string[] {
  const { statuses, standings, outcomes, harms, casualties, filters } = say;
  const labelled = (words: Readonly<Record<string, string>>, name: string, value?: string): string[] =>
    value === undefined ? [] : [`${name} ${words[value] ?? value}`];
  return [
    ...labelled(statuses, '', status),
    ...labelled(standings, `${filters.reports}:`, reports),
    ...labelled(outcomes, `${filters.outcome}`, outcome),
    ...labelled(harms, filters.hurt, hurt),
    ...labelled({}, '', craft),
    ...labelled({}, '', station),
    ...labelled(casualties, '', casualty),
    ...labelled({}, filters.from, from),
    ...labelled({}, filters.until, until),
  ].map((words) => words.trim());
}

/** Craft by their names; one of the address that the fleet has no more can still be seen and taken back. */
function listed(names: readonly string[], chosen: string | undefined): Record<string, string> {
  const all = chosen === undefined || names.includes(chosen) ? names : [...names, chosen];
  return Object.fromEntries(all.map((name) => [name, name]));
}

const casualties = (): Record<string, string> =>
  Object.fromEntries(casualtyTypeSlugs.map((slug) => [slug, say.casualties[slug] ?? slug]));

/** The usual order is what stands where none is chosen. */
function latestLess({ latest, ...orders }: typeof say.orders): Record<string, string> {
  void latest;
  return orders;
}
