import { useRef, useState } from 'preact/hooks';
import { RECIPIENTS } from '../../../shared/hand-over/hand-over-profile.js';
import { useAsk } from '../ask/use-ask.js';
import { useTell } from '../ask/use-tell.js';
import { Button } from '../look/button.js';
import { Choice } from '../look/choice.js';
import { Field } from '../look/field.js';
import { ErrorState, Loading, Note } from '../look/notes.js';
import { Select } from '../look/select.js';
import { handOver as say } from '../words/hand-over.js';
import { CautionsList, unreadIn } from './cautions-list.js';
import { ChangedList } from './changed-list.js';
import type { PacketView, PeopleAnswer, PreviewAnswer } from './hand-over-answers.js';
import { draftBody, EMPTY_DRAFT, type PacketDraft } from './packet-draft.js';
import { PreviewItems } from './preview-items.js';

/** From recipient to packet: who gets it, what would leave, what the sender changes, and the packet itself. */
export function MakePacket({ id, purpose = '' }: { id: string; purpose?: string }) {
  const path = `/api/incidents/${id}`;
  const people = useAsk<PeopleAnswer>(`${path}/sections/people`).data?.document.people ?? [];
  const [draft, setDraft] = useState<PacketDraft>({ ...EMPTY_DRAFT, purpose });
  const [preview, setPreview] = useState<PreviewAnswer | null>(null);
  const [pressed, setPressed] = useState(false);
  const [made, setMade] = useState<PacketView | null>(null);
  const looking = useTell();
  const making = useTell();
  const key = useRef(crypto.randomUUID());
  const latest = useRef(0);
  const lacks = (text: string): string | null => (pressed && text.trim() === '' ? say.needed : null);

  const look = async (next: PacketDraft): Promise<void> => {
    const turn = (latest.current += 1);
    making.forget();
    const answer = await looking.tell<PreviewAnswer>(`${path}/packet-previews`, {
      method: 'POST',
      body: draftBody(next),
    });
    // An answer to something that was changed meanwhile would show what no longer is.
    if (answer !== undefined && turn === latest.current) setPreview(answer);
  };
  const change = (next: PacketDraft): void => {
    setDraft(next);
    key.current = crypto.randomUUID();
    setMade(null);
    if (preview !== null) void look(next);
  };
  /** Before the first look nothing is asked for; afterwards the list is always that of the draft. */
  const write = (part: Partial<PacketDraft>): void => {
    setDraft({ ...draft, ...part });
    key.current = crypto.randomUUID();
    setMade(null);
  };
  const choose = (part: Partial<PacketDraft>): void => {
    write(part);
    setPreview(null);
  };
  const submit = async (event: Event): Promise<void> => {
    event.preventDefault();
    setPressed(true);
    if (draft.name.trim() !== '' && draft.purpose.trim() !== '') await look(draft);
  };
  const unreasoned = preview === null ? [] : unreasonedIn(draft, preview);
  const unread = preview === null ? [] : unreadIn(preview, draft.read);
  const make = async (): Promise<void> => {
    setPressed(true);
    if (unreasoned.length > 0 || unread.length > 0 || draft.name.trim() === '' || draft.purpose.trim() === '')
      return;
    const body = draftBody(draft);
    const answer = await making.tell<PacketView>(
      `${path}/packets`,
      { method: 'POST', body, key: key.current },
      [`${path}/packets`],
    );
    if (answer === undefined) return;
    setMade(answer);
    setPreview(null);
    setPressed(false);
    setDraft(EMPTY_DRAFT);
    key.current = crypto.randomUUID();
  };
  return (
    <>
      <form class="form" onSubmit={(event) => void submit(event)} noValidate>
        <Choice
          legend={say.recipient}
          options={RECIPIENTS.map((value) => ({ value, label: say.recipients[value] }))}
          value={draft.recipient}
          onChoose={(recipient) => choose({ recipient, choices: [], person: '', read: [] })}
        />
        <Field
          label={say.toName}
          value={draft.name}
          onInput={(name) => write({ name })}
          error={lacks(draft.name)}
        />
        <Field
          label={say.purpose}
          hint={say.purposeHint}
          value={draft.purpose}
          onInput={(purpose) => write({ purpose })}
          error={lacks(draft.purpose)}
        />
        {people.length > 0 && draft.recipient !== 'insurer' && draft.recipient !== 'counsel' && (
          <Select
            label={say.person}
            hint={say.personHint}
            none={say.personNone}
            optional
            value={draft.person}
            onChoose={(person) => choose({ person })}
            groups={[{ options: people.map((one) => ({ value: one.id, label: one.name ?? one.id })) }]}
          />
        )}
        <Button type="submit" look={preview === null ? 'main' : 'second'} busy={looking.pending}>
          {preview === null ? say.look : say.lookAgain}
        </Button>
      </form>
      {looking.error !== null && <ErrorState error={looking.error} />}
      {looking.pending && preview === null && <Loading what={say.looking} />}
      {preview !== null && (
        <>
          <PreviewItems id={id} preview={preview} draft={draft} onChange={change} />
          <ChangedList
            preview={preview}
            draft={draft}
            onChange={change}
            onReason={setDraft}
            missing={pressed ? unreasoned : []}
          />
          <CautionsList id={id} preview={preview} draft={draft} onChange={change} pressed={pressed} />
          {preview.others.some(({ kind, does }) => kind === 'privileged' && does === 'goes') && (
            <p class="quiet">{say.privilegedNote}</p>
          )}
          {making.error !== null && <ErrorState error={making.error} />}
          {making.pending && <Loading what={say.making} />}
          <p>
            <Button look="main" busy={making.pending || looking.pending} onPress={() => void make()}>
              {say.makeIt}
            </Button>
          </p>
        </>
      )}
      {made !== null && <Note kind="saved">{say.made}</Note>}
    </>
  );
}

/** What leaves against the profile, of which nobody has said why yet. */
function unreasonedIn({ choices }: PacketDraft, { fields, files, others }: PreviewAnswer): string[] {
  const overriding = new Set<string>();
  for (const { by, kind, section, path } of fields)
    if (by === 'override') [kind ?? '', `${section}:${path}`].forEach((name) => overriding.add(name));
  for (const { by, kind, id } of files)
    if (by === 'override') [kind, id].forEach((name) => overriding.add(name));
  for (const { by, kind } of others) if (by === 'override') overriding.add(kind);
  return choices
    .filter(({ what, does, reason = '' }) => does === 'goes' && overriding.has(what) && reason.trim() === '')
    .map(({ what }) => what);
}
