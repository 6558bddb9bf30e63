import { HOW_KNOWN, type HowKnown } from '../../../shared/call/known.js';
import { fieldWords } from '../../../shared/record/field-words/tell-field.js';
import { Choice } from '../look/choice.js';
import { Field } from '../look/field.js';
import { useSession } from '../session/session.js';
import { record as say } from '../words/record.js';
import { language } from '../words/speak.js';
import type { Source } from './section-draft.js';

interface SourceFieldsProps {
  readonly legend: string;
  readonly hint?: string;
  readonly source: Source | undefined;
  readonly onSource: (source: Source) => void;
  readonly error?: string | null;
}

/** How something is known, and by whom. */
export function SourceFields({ legend, hint, source, onSource, error }: SourceFieldsProps) {
  const { values } = fieldWords(language());
  const { me } = useSession();
  return (
    <div class="source-fields">
      <Choice
        legend={legend}
        hint={hint}
        error={error}
        value={source?.known}
        options={HOW_KNOWN.map((value) => ({ value, label: values.known[value] }))}
        onChoose={(known) => onSource({ known, by: nameFor(known, source?.by ?? '', me?.name ?? '') })}
      />
      {source !== undefined && (
        <Field
          label={say.source.by[source.known]}
          value={source.by}
          onInput={(by) => onSource({ ...source, by })}
        />
      )}
    </div>
  );
}

/** Whoever saw it is most often the writer; a name that stands there already stays. */
function nameFor(known: HowKnown, by: string, me: string): string {
  if (known === 'saw' && by === '') return me;
  return known !== 'saw' && by === me ? '' : by;
}
