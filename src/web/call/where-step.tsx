import { useState } from 'preact/hooks';
import { Button } from '../look/button.js';
import { Loading, Note } from '../look/notes.js';
import { call as say } from '../words/call.js';
import { callInRecord } from '../words/en/call-in-record.js';
import type { Where } from './call-draft.js';
import { withAnswer, withLine, withPassed } from './change-draft.js';
import { findPosition } from './find-position.js';
import { positionOfWhere } from './tell-where.js';
import type { CallHands } from './use-call.js';
import type { Choices } from './use-choices.js';
import { WhereElse } from './where-else.js';

type Finding = 'not-asked' | 'elsewhere' | 'finding' | 'refused' | 'not-found';

/** Where it was. The phone's position counts only where the phone is where it happened, so that is asked first. */
export function WhereStep({ hands, choices }: { hands: CallHands; choices: Choices }) {
  const [finding, setFinding] = useState<Finding>(hands.entry === 'now' ? 'not-asked' : 'elsewhere');
  const keep = (where: Where, words: string): void =>
    void hands.change((before, now) =>
      withPassed(withLine(withAnswer(before, 'where', where, now), callInRecord.where(words), now), 'where'),
    );
  const here = async (): Promise<void> => {
    setFinding('finding');
    const found = await findPosition();
    if (found.kind !== 'found') {
      setFinding(found.kind);
      return;
    }
    const { latitude, longitude, accuracyM } = found;
    const where: Where = { how: 'phone', latitude, longitude, accuracyM };
    keep(where, `${positionOfWhere(where) ?? ''}, the phone at the place, within ${accuracyM} m`);
  };
  return (
    <>
      {finding === 'not-asked' && (
        <div class="pair">
          <Button look="main" onPress={() => void here()}>
            {say.where.hereYes}
          </Button>
          <Button onPress={() => setFinding('elsewhere')}>{say.where.hereNo}</Button>
        </div>
      )}
      {finding === 'finding' && <Loading what={say.where.finding} />}
      {finding === 'finding' && <Button onPress={() => setFinding('elsewhere')}>{say.where.otherWay}</Button>}
      {finding === 'refused' && <Note kind="error">{say.where.refused}</Note>}
      {finding === 'not-found' && <Note kind="error">{say.where.notFound}</Note>}
      {finding !== 'not-asked' && finding !== 'finding' && <WhereElse choices={choices} keep={keep} />}
    </>
  );
}
