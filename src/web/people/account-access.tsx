import { useState } from 'preact/hooks';
import { useTell } from '../ask/use-tell.js';
import { ConfirmDialog } from '../lists/confirm-dialog.js';
import { Button } from '../look/button.js';
import { ErrorState, UndoStrip } from '../look/notes.js';
import { people as say } from '../words/en/people.js';
import type { Account, NewAccount } from './account.js';
import { ShownOnce } from './shown-once.js';

type Asking = 'reset' | 'end' | null;

/** A new one-time password, and the end of an account: each after a second question. */
export function AccountAccess({ account }: { account: Account }) {
  const { id, name, active, version } = account;
  const telling = useTell();
  const [asking, setAsking] = useState<Asking>(null);
  const [given, setGiven] = useState<NewAccount | null>(null);
  const [turned, setTurned] = useState<string | null>(null);
  const path = `/api/accounts/${id}`;
  const reset = async (): Promise<void> => {
    setAsking(null);
    const answer = await telling.tell<NewAccount>(`${path}/password-reset`, { method: 'POST' }, [
      '/api/accounts',
    ]);
    if (answer !== undefined) setGiven(answer);
  };
  const turn = async (to: boolean): Promise<void> => {
    setAsking(null);
    const asked = { method: 'PATCH', body: { active: to }, version } as const;
    const answer = await telling.tell<Account>(path, asked, ['/api/accounts']);
    if (answer !== undefined) setTurned(to ? say.accounts.reopened(name) : say.accounts.endedDone(name));
  };
  return (
    <>
      {turned !== null && <UndoStrip undo={() => void turn(!active)}>{turned}</UndoStrip>}
      {telling.error !== null && <ErrorState error={telling.error} />}
      {given !== null && (
        <ShownOnce
          what={`${say.once.password}: ${name}`}
          secret={given.oneTimePassword}
          until={given.passwordExpiresAt}
          onSeen={() => setGiven(null)}
        />
      )}
      <div class="buttons">
        {active && (
          <Button busy={telling.pending} onPress={() => setAsking('reset')}>
            {say.accounts.reset}
          </Button>
        )}
        {active ? (
          <Button busy={telling.pending} onPress={() => setAsking('end')}>
            {say.accounts.end}
          </Button>
        ) : (
          <Button busy={telling.pending} onPress={() => void turn(true)}>
            {say.accounts.reopen}
          </Button>
        )}
      </div>
      {asking === 'reset' && (
        <ConfirmDialog
          title={`${say.accounts.reset}?`}
          text={say.accounts.resetText}
          yes={say.accounts.reset}
          onYes={() => void reset()}
          onNo={() => setAsking(null)}
        />
      )}
      {asking === 'end' && (
        <ConfirmDialog
          title={`${say.accounts.end}?`}
          text={say.accounts.endText}
          yes={say.accounts.end}
          onYes={() => void turn(false)}
          onNo={() => setAsking(null)}
        />
      )}
    </>
  );
}
