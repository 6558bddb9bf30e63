import { Section } from '../look/section.js';
import { call as say } from '../words/call.js';
import { callInRecord } from '../words/en/call-in-record.js';
import { KeptField } from './kept-field.js';
import { Photographs } from './photographs.js';
import type { CallHands } from './use-call.js';

/** Everything was asked: what else was said, who called, and photographs. */
export function AfterCall({ hands: { draft, answer, change } }: { hands: CallHands }) {
  if (draft === null) return null;
  const { said, callerName, callBack } = draft.answers;
  return (
    <Section title={say.all}>
      <KeptField
        label={say.happened.said}
        hint={say.happened.saidHint}
        rows={3}
        value={said?.value ?? ''}
        onKeep={(words) => answer('said', words, callInRecord.words(words))}
      />
      <KeptField
        label={say.caller.name}
        value={callerName?.value ?? ''}
        onKeep={(name) => answer('callerName', name, callInRecord.caller(name))}
      />
      <KeptField
        label={say.caller.callBack}
        type="tel"
        value={callBack?.value ?? ''}
        onKeep={(number) => answer('callBack', number, callInRecord.callBack(number))}
      />
      <Photographs
        incident={draft.id}
        ofSheet={draft.fromPaper}
        onKept={() => void change((before) => ({ ...before, photographs: before.photographs + 1 }))}
      />
    </Section>
  );
}
