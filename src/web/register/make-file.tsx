import { useState } from 'preact/hooks';
import type { ExportSubject } from '../../../shared/wire/register-queries.dto.js';
import { Button } from '../look/button.js';
import { ErrorState, Note } from '../look/notes.js';
import { Section } from '../look/section.js';
import { Select } from '../look/select.js';
import { common } from '../words/common.js';
import { register as say } from '../words/register.js';
import { askedOf, type RegisterQuery } from './register-query.js';
import { useExport } from './use-export.js';

const SUBJECTS: readonly ExportSubject[] = ['incidents', 'duties', 'tasks', 'filings'];

/** What the search finds as a workbook, or one subject of it as a table. */
export function MakeFile({ query, zone }: { query: RegisterQuery; zone: string }) {
  const [subject, setSubject] = useState<ExportSubject>('incidents');
  const { job, error, busy, start, file } = useExport();
  const filter = askedOf(query, zone);
  return (
    <div class="unprinted">
      <Section title={say.files.title}>
        <p class="quiet">{say.files.about}</p>
        <div class="make-file">
          <Button busy={busy} onPress={() => void start({ ...filter, format: 'xlsx' })}>
            {say.files.workbook}
          </Button>
          <Select
            label={say.files.of}
            value={subject}
            none={say.files.of}
            groups={[{ options: SUBJECTS.map((value) => ({ value, label: say.files.subjects[value] })) }]}
            onChoose={(value) => value !== '' && setSubject(value)}
          />
          <Button busy={busy} onPress={() => void start({ ...filter, format: 'csv', subject })}>
            {say.files.table}
          </Button>
        </div>
        {busy && job !== null && (
          <p role="status">
            <label>
              {say.files.writing}: {say.files.progress(job.done, job.total)}
              <progress value={job.done} max={Math.max(job.total, 1)} />
            </label>
          </p>
        )}
        {job?.state === 'failed' && <Note kind="error">{job.advice ?? common.trouble.broken}</Note>}
        {error !== null && <ErrorState error={error} />}
        {file !== null && (
          <Note kind="saved">
            <p>{say.files.ready}</p>
            <a class="button main" href={file} download>
              {say.files.save}
            </a>
          </Note>
        )}
      </Section>
    </div>
  );
}
