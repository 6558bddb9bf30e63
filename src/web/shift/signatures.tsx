import { useState } from 'preact/hooks';
import { useTell } from '../ask/use-tell.js';
import { Button } from '../look/button.js';
import { Fold } from '../look/fold.js';
import { ErrorState, Note } from '../look/notes.js';
import { DefinitionRows, Section } from '../look/section.js';
import { tellInstant } from '../look/tell-instant.js';
import { useNow } from '../look/use-now.js';
import { useSession } from '../session/session.js';
import { SignInForm } from '../session/sign-in-form.js';
import { shiftHandOver as say } from '../words/shift-hand-over.js';
import { HAND_OVERS, type HandOverAnswer } from './hand-over-answer.js';

type Side = 'outgoing' | 'incoming';

/** Both shifts sign, the outgoing first, each as whoever is signed in: two different people. */
export function Signatures({ handOver, zone }: { handOver: HandOverAnswer; zone: string }) {
  const now = useNow();
  const { me } = useSession();
  const [said, setSaid] = useState(false);
  const { tell, pending, error } = useTell();
  const { id, version, outgoingId, outgoingName, outgoingAt, incomingName, incomingAt } = handOver;
  const signed = (name: string | null, at: string | null) =>
    name === null || at === null ? (
      <>
        <span class="unprinted">{say.sign.notYet}</span>
        <span class="sign-here">{say.sign.paper}</span>
      </>
    ) : (
      say.sign.signed(name, tellInstant(at, zone, now))
    );
  const sign = async (side: Side): Promise<void> => {
    const path = `${HAND_OVERS}/${id}/signatures`;
    const answer = await tell(path, { method: 'POST', body: { side }, version }, [HAND_OVERS]);
    setSaid(answer !== undefined);
  };
  const side: Side | null = outgoingName === null ? 'outgoing' : incomingName === null ? 'incoming' : null;
  const isOther = me !== null && me.accountId !== outgoingId;
  return (
    <Section title={say.sign.title}>
      <DefinitionRows
        rows={[
          { term: say.sign.outgoing, value: signed(outgoingName, outgoingAt) },
          { term: say.sign.incoming, value: signed(incomingName, incomingAt) },
        ]}
      />
      {error !== null && <ErrorState error={error} />}
      {said && <Note kind="saved">{side === null ? say.sign.complete : say.sign.done}</Note>}
      {side === 'outgoing' && <p class="quiet unprinted">{say.sign.outgoingFirst}</p>}
      {me !== null && side !== null && (side === 'outgoing' || isOther) && (
        <Button look="main" busy={pending} onPress={() => void sign(side)}>
          {side === 'outgoing' ? say.sign.asOutgoing(me.name) : say.sign.asIncoming(me.name)}
        </Button>
      )}
      {side === 'incoming' && !isOther && (
        <>
          <p class="unprinted">{say.sign.other}</p>
          <Fold title={say.sign.here}>
            {() => (
              <div class="form">
                <p>{say.sign.hereLead}</p>
                <SignInForm />
              </div>
            )}
          </Fold>
        </>
      )}
    </Section>
  );
}
