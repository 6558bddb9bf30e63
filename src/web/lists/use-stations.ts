import { useAskAll } from '../ask/use-ask-all.js';
import type { SpecOption } from './field-spec.js';

/** The stations to choose from; those that were closed as well, as a craft may still be entered with one. */
export function useStations(): readonly SpecOption[] {
  const { data = [] } = useAskAll<{ id: string; name: string }>('/api/stations?retired=yes', { keep: true });
  return data.map(({ id, name }) => ({ value: id, label: name }));
}
