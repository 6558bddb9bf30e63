import { useState } from 'preact/hooks';
import { Field } from '../look/field.js';
import { Empty } from '../look/notes.js';
import { Section } from '../look/section.js';
import { TakePhotographs } from '../look/take-photographs.js';
import { useSession } from '../session/session.js';
import { evidence as say } from '../words/evidence.js';
import type { EvidenceAnswer } from './evidence-answers.js';
import { FileCard } from './file-card.js';
import { useShots } from './use-shots.js';

interface FilesSectionProps {
  readonly incident: string;
  readonly answer: EvidenceAnswer;
  readonly timeZone: string | undefined;
}

/** What has arrived, the latest first, and the way to add what is on no list. */
export function FilesSection({ incident, answer, timeZone }: FilesSectionProps) {
  const { files, restricted, arriving } = answer;
  const mayWrite = useSession().me?.role !== 'counsel';
  return (
    <Section title={say.files.title}>
      {mayWrite && <AddFile incident={incident} />}
      {arriving.length > 0 && <p>{say.files.arriving(arriving.length)}</p>}
      {restricted > 0 && <p>{say.files.more(restricted)}</p>}
      {files.length === 0 && (
        <Empty>
          <p>{say.files.none}</p>
        </Empty>
      )}
      <ul class="files">
        {files.toReversed().map((file) => (
          <FileCard key={file.id} incident={incident} file={file} timeZone={timeZone} />
        ))}
      </ul>
    </Section>
  );
}

function AddFile({ incident }: { incident: string }) {
  const shots = useShots(incident);
  const [caption, setCaption] = useState('');
  const keep = async (file: File): Promise<void> => {
    await shots.takeOther(file, caption);
    setCaption('');
  };
  return (
    <div class="form unprinted">
      <Field label={say.files.caption} hint={say.files.captionHint} value={caption} onInput={setCaption} />
      <TakePhotographs label={say.files.take} keep={keep} />
      <TakePhotographs label={say.files.choose} keep={keep} anyFile />
    </div>
  );
}
