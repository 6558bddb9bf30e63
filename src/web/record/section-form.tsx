import { useEffect, useState } from 'preact/hooks';
import type { CraftSection } from '../../../shared/record/craft-section.js';
import { type JsonValue, sameJson } from '../../../shared/record/json-value.js';
import { SECTION_SHAPES } from '../../../shared/wire/record-sections.js';
import { dropQueued, useOutbox } from '../device/outbox.js';
import { Button } from '../look/button.js';
import { Field } from '../look/field.js';
import { Note, UndoStrip } from '../look/notes.js';
import { record as say } from '../words/record.js';
import { addsOnly } from './adds-only.js';
import { ConflictView } from './conflict-view.js';
import { dropDraft, keepDraft } from './draft-store.js';
import { withValue } from './edit-document.js';
import { fillFromFleet } from './fill-from-fleet.js';
import { faultsOfAnswer, findFaults, type FormFault } from './find-faults.js';
import { MemberGroups } from './member-groups.js';
import { documentOf } from './record-answers.js';
import { EditorProvider, type SectionEditor } from './section-editor.js';
import { isUnsaved, type SectionDraft } from './section-draft.js';
import { SectionState } from './section-state.js';
import { SourceFields } from './source-fields.js';
import { addToSection, queuedOf, sendSection } from './sync-sections.js';
import { focusField, TargetProvider } from './target.js';
import { tidyDocument } from './tidy-document.js';
import { useChoosable } from './use-choosable.js';
import type { OpenSection } from './use-section.js';
import { withSource } from './with-source.js';

interface SectionFormProps {
  readonly open: OpenSection;
  readonly draft: SectionDraft;
  readonly timeZone: string;
  readonly lacking: ReadonlySet<string>;
  /** The field that somebody was led to; a new object each time. */
  readonly sought: { readonly path: string } | null;
}

/** The questions of a section, what is written in it, and the way to save it. */
export function SectionForm({ open, draft, timeZone, lacking, sought }: SectionFormProps) {
  const { section, document, base, source } = draft;
  const [reason, setReason] = useState('');
  const [faults, setFaults] = useState<readonly FormFault[]>([]);
  const [target, setTarget] = useState(sought);
  const [thrown, setThrown] = useState<SectionDraft | null>(null);
  const [nothing, setNothing] = useState(false);
  const queued = queuedOf(draft, useOutbox(draft.incident));
  const { choices, fleet } = useChoosable(section, document, open.record, !open.addsOnly);
  useEffect(() => setTarget(sought), [sought]);
  useEffect(() => {
    if (target !== null) focusField(target.path);
  }, [target]);
  useEffect(() => {
    if (queued?.state === 'refused') setFaults(faultsOfAnswer(document, queued.problem?.errors ?? []));
  }, [queued?.state]);

  const alters = !open.addsOnly && !addsOnly(base, tidyDocument(document));
  const change = (next: SectionDraft): void => {
    setNothing(false);
    setThrown(null);
    keepDraft(next);
  };
  const save = async (event: Event): Promise<void> => {
    event.preventDefault();
    const tidied = tidyDocument(document);
    const unchosen = (draft.open ?? []).map(({ path }) => ({
      path: `conflict${path}`,
      detail: say.conflict.chooseFirst,
    }));
    const found = [...unchosen, ...findFaults(draft, section, tidied, open.addsOnly ? '-' : reason)];
    setFaults(found);
    setNothing(false);
    const [first] = found;
    if (first !== undefined) return setTarget({ path: first.path });
    if (sameJson(tidied, base)) {
      dropDraft(draft.id);
      if (queued !== undefined) await dropQueued(queued.id);
      return setNothing(true);
    }
    const whole = { ...draft, document: tidied };
    await (open.addsOnly ? addToSection(whole) : sendSection(whole, alters ? reason.trim() : undefined));
    setReason('');
  };
  const editor: SectionEditor = {
    section,
    document,
    base,
    timeZone,
    source,
    addsOnly: open.addsOnly,
    readOnly: open.readOnly,
    craft: craftOf(open, draft),
    choices,
    lacking,
    faultAt: (path) =>
      faults.find((fault) => fault.path === path || fault.path.startsWith(`${path}/`))?.detail ?? null,
    set: (path: string, value: JsonValue | undefined) => {
      const next = withValue(document, path, value);
      const chosen = path.endsWith('/fleetCraft') ? fleet.find(({ id }) => id === value) : undefined;
      const at = path.slice(0, path.lastIndexOf('/'));
      change({ ...draft, document: chosen === undefined ? next : fillFromFleet(next, at, chosen) });
    },
  };
  const faultOf = (path: string): string | null =>
    faults.find((fault) => fault.path === path)?.detail ?? null;
  return (
    <form class="record-form" onSubmit={(event) => void save(event)} noValidate>
      {faults.length > 0 && <Note kind="error">{say.faults(faults.length)}</Note>}
      <ConflictView draft={draft} timeZone={timeZone} />
      <div data-path="source">
        <SourceFields
          legend={say.source.title}
          hint={say.source.hint}
          source={source}
          error={faultOf('source')}
          onSource={(next) => change(withSource(draft, next))}
        />
      </div>
      <TargetProvider value={{ target: target?.path ?? null }}>
        <EditorProvider value={editor}>
          <MemberGroups shape={SECTION_SHAPES[section]} path="" />
        </EditorProvider>
      </TargetProvider>
      {alters && (
        <div data-path="reason">
          <Field
            label={say.reason.label}
            hint={say.reason.hint}
            error={faultOf('reason')}
            value={reason}
            onInput={setReason}
          />
        </div>
      )}
      {thrown !== null && <UndoStrip undo={() => change(thrown)}>{say.thrownAway}</UndoStrip>}
      {isUnsaved(draft) && queued === undefined && (
        <Button
          look="plain"
          onPress={() => {
            setThrown(draft);
            setFaults([]);
            dropDraft(draft.id);
          }}
        >
          {say.throwAway}
        </Button>
      )}
      <div class="actions">
        {nothing ? <Note>{say.nothingToSave}</Note> : <SectionState draft={draft} />}
        <Button type="submit" look="main">
          {open.addsOnly ? say.saveAdding : say.save}
        </Button>
      </div>
    </form>
  );
}

function craftOf({ record }: OpenSection, { section, document }: SectionDraft): CraftSection {
  return section === 'craft' ? document : documentOf(record, 'craft');
}
