import { useAsk } from '../ask/use-ask.js';
import { tellInstant } from '../look/tell-instant.js';
import { useNow } from '../look/use-now.js';
import { today as say } from '../words/today.js';
import { DayPart } from './day-part.js';
import type { BackupLine, Listed } from './service-answers.js';

const WEEK_MS = 7 * 86_400_000;

/** The last copy of the desk that was made and checked. A record that stands in one place alone is easily lost. */
export function BackupsPart({ zone }: { zone: string }) {
  const now = useNow();
  const asked = useAsk<Listed<BackupLine>>('/api/backups');
  return (
    <DayPart title={say.backups.title} asked={asked}>
      {({ items: [last] }) =>
        last === undefined ? (
          <p>{say.backups.none}</p>
        ) : (
          <>
            <p>
              <strong>{tellInstant(last.madeAt, zone, now)}</strong>
            </p>
            <p>
              {last.faults === 0
                ? say.backups.fine(last.incidents, last.files)
                : say.backups.faults(last.faults)}
            </p>
            {now - Date.parse(last.madeAt) > WEEK_MS && <p>{say.backups.old}</p>}
            <p class="quiet">{say.backups.where(last.folder)}</p>
          </>
        )
      }
    </DayPart>
  );
}
