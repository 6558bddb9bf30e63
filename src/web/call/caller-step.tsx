import { Button } from '../look/button.js';
import { call as say } from '../words/call.js';
import { callInRecord } from '../words/en/call-in-record.js';
import type { CallDraft } from './call-draft.js';
import { KeptField } from './kept-field.js';
import type { CallHands } from './use-call.js';

type Told = 'callerName' | 'callBack' | 'when' | 'whyNow';

/** Who tells it only now, how to reach them, when it was, and why now. */
export function CallerStep({ hands }: { hands: CallHands }) {
  const { draft, answer, pass } = hands;
  const valueOf = (name: Told): string => draft?.answers[name]?.value ?? '';
  return (
    <>
      <KeptField
        label={say.caller.name}
        value={valueOf('callerName')}
        onKeep={(value) => answer('callerName', value)}
      />
      <KeptField
        label={say.caller.callBack}
        value={valueOf('callBack')}
        onKeep={(value) => answer('callBack', value)}
        type="tel"
      />
      <KeptField
        label={say.caller.when}
        hint={say.caller.whenHint}
        value={valueOf('when')}
        onKeep={(value) => answer('when', value)}
      />
      <KeptField
        label={say.caller.whyNow}
        value={valueOf('whyNow')}
        onKeep={(value) => answer('whyNow', value)}
        rows={2}
      />
      <Button look="main" onPress={() => pass('caller', draft === null ? undefined : toldBy(draft))}>
        {say.next}
      </Button>
    </>
  );
}

function toldBy({ answers: { callerName, callBack, when, whyNow } }: CallDraft): string {
  return [
    callerName && callInRecord.caller(callerName.value),
    callBack && callInRecord.callBack(callBack.value),
    when && callInRecord.when(when.value),
    whyNow && callInRecord.whyNow(whyNow.value),
  ]
    .filter((part) => part !== undefined)
    .join(' ');
}
