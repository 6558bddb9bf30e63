import { useAskAll } from '../ask/use-ask-all.js';
import type { SpecOption } from './field-spec.js';

/** The stations to choose from; those that were closed as well, as a craft may still be entered with one. */
export function useStations(mayAsk = true): readonly SpecOption[] {
  const path = mayAsk ? '/api/stations?retired=yes' : null;
  const { data = [] } = useAskAll<{ id: string; name: string }>(path, { keep: true });
  return data.map(({ id, name }) => ({ value: id, label: name }));
}
