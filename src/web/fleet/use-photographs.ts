import { useAsk } from '../ask/use-ask.js';

/** A photograph of the evidence: the id it is kept under, and its name. */
export interface NamedPhotograph {
  readonly value: string;
  readonly label: string;
}

interface Evidence {
  readonly files: readonly { readonly id: string; readonly name: string; readonly caption?: string | null }[];
}

/** The files of an incident's evidence, to be named where photographs are asked for; none for upkeep. */
export function usePhotographs(incident: string | null): readonly NamedPhotograph[] {
  const { data } = useAsk<Evidence>(incident === null ? null : `/api/incidents/${incident}/evidence`);
  return (data?.files ?? []).map(({ id, name, caption }) => ({
    value: id,
    label: caption === undefined || caption === null || caption === '' ? name : `${name}, ${caption}`,
  }));
}
