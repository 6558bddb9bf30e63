import type { Known } from '../../../shared/call/known.js';
import { fieldLabel } from '../../../shared/record/field-words/tell-field.js';
import {
  isJsonObject,
  type JsonObject,
  type JsonValue,
  sameJson,
} from '../../../shared/record/json-value.js';
import { isOwnWords } from '../../../shared/record/wording/own-words.js';
import { Button } from '../look/button.js';
import { tellHowKnown } from '../look/tell-recorded.js';
import { record as say } from '../words/record.js';
import { language } from '../words/speak.js';
import { valueAt } from './edit-document.js';
import type { PlacedMember } from './order-members.js';
import { useEditor } from './section-editor.js';
import type { Source } from './section-draft.js';
import { SourceFields } from './source-fields.js';
import { ValueControl } from './value-control.js';
import { WordingAid } from './wording-aid.js';

/** One field of the record, with how it is known where it is a fact. */
export function MemberField({ name, path, member }: PlacedMember) {
  const { section, document, base, source, faultAt, set, lacking } = useEditor();
  if (!('rule' in member)) return null;
  const label = fieldLabel(section, path, language()) ?? name;
  const there = valueAt(document, path);
  const isFact = member.kind === 'known';
  const fact = isFact && isJsonObject(there) ? there : undefined;
  const value = isFact ? fact?.['value'] : there;
  const write = (to: JsonValue | undefined): void =>
    set(path, !isFact || to === undefined ? to : factWith(to, fact, valueAt(base, path), source));
  const isFirst = valueAt(base, path) === undefined;
  return (
    <div class="member" id={fieldId(path)} data-path={path}>
      <ValueControl
        rule={member.rule}
        name={name}
        path={path}
        label={label}
        value={value}
        onValue={write}
        error={faultAt(path)}
      />
      {lacking.has(path) && value === undefined && <p class="lacks-this">{say.lacksThis}</p>}
      {isFirst && isOwnWords(section, path, fact?.['known'] as string | undefined) && (
        <WordingAid text={wordsOf(value)} />
      )}
      {fact !== undefined && <FactSource path={path} label={label} fact={fact} />}
    </div>
  );
}

export const fieldId = (path: string): string => `field${path.replaceAll(/[^\w-]/g, '_')}`;

/** A fact that is changed is known as the writer knows it now; while it is written on, it stays so. */
function factWith(
  value: JsonValue,
  fact: JsonObject | undefined,
  before: JsonValue | undefined,
  source: Source | undefined,
): JsonObject {
  if (fact !== undefined && (before === undefined || !sameJson(fact, before))) return { ...fact, value };
  return { value, ...(source !== undefined && factSource(source)) };
}

function factSource({ known, by }: Source): JsonObject {
  return { known, ...(by.trim() !== '' && { by: by.trim() }) };
}

function FactSource({ path, label, fact }: { path: string; label: string; fact: JsonObject }) {
  const { set, timeZone } = useEditor();
  const { known, by = '' } = fact as unknown as Partial<Known<unknown>>;
  const told = known === undefined ? say.source.missing : tellHowKnown(fact, timeZone);
  return (
    <details class="fact-source">
      <summary>
        {told} <span class="unseen">({label})</span>
      </summary>
      <SourceFields
        legend={say.source.ofThis}
        source={known === undefined ? undefined : { known, by }}
        onSource={(source) => {
          const { by: before, ...rest } = fact;
          void before;
          set(path, { ...rest, known: source.known, ...(source.by !== '' && { by: source.by }) });
        }}
      />
      <Button look="plain" onPress={() => set(path, undefined)}>
        {say.takeBack}
      </Button>
    </details>
  );
}

function wordsOf(value: JsonValue | undefined): string {
  if (typeof value === 'string') return value;
  return Array.isArray(value) ? value.join('\n') : '';
}
