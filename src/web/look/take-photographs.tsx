import { useId, useState } from 'preact/hooks';
import { common } from '../words/common.js';
import { Note } from './notes.js';

interface TakePhotographsProps {
  readonly label: string;
  /** For a screen reader, where the label alone does not say which picture. */
  readonly of?: string;
  /** Keeps one picture; it is on the disk when this returns. */
  readonly keep: (file: File) => Promise<void>;
  /** Also files that are no pictures, such as a recording; then the camera does not open by itself. */
  readonly anyFile?: boolean;
}

/** Opens the camera of a phone, or the files of a computer. What could not be kept is said, so that it is kept elsewhere. */
export function TakePhotographs({ label, of, keep, anyFile = false }: TakePhotographsProps) {
  const id = useId();
  const [failed, setFailed] = useState(false);
  const take = async (input: HTMLInputElement): Promise<void> => {
    setFailed(false);
    for (const file of [...(input.files ?? [])]) {
      try {
        await keep(file);
      } catch (error) {
        console.warn('A photograph could not be kept.', error);
        setFailed(true);
      }
    }
    // The same picture again is a change again.
    input.value = '';
  };
  return (
    <div class="photographs">
      <label class="button" for={id}>
        {label}
        {of !== undefined && <span class="unseen"> {of}</span>}
      </label>
      <input
        id={id}
        class="unseen"
        type="file"
        multiple
        {...(!anyFile && { accept: 'image/*', capture: 'environment' as const })}
        onChange={({ currentTarget }) => void take(currentTarget)}
      />
      {failed && <Note kind="error">{common.photographNotKept}</Note>}
    </div>
  );
}
