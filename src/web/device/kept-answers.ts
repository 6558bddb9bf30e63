import { find, keep } from './sealed-store.js';

interface Kept<Answer> {
  readonly answer: Answer;
  readonly keptAt: string;
}

/** Keeps what the service said, for when there is no signal. A device that cannot keep it goes on without. */
export async function keepAnswer(path: string, answer: unknown): Promise<void> {
  try {
    await keep('answers', path, { answer, keptAt: new Date().toISOString() });
  } catch (error) {
    console.warn('This answer could not be kept on the device.', error);
  }
}

/** What was kept of an address; undefined where nothing was, or where this device keeps nothing. */
export async function keptAnswer<Answer>(path: string): Promise<Kept<Answer> | undefined> {
  try {
    return await find<Kept<Answer>>('answers', path);
  } catch (error) {
    console.warn('What this device keeps could not be read.', error);
    return undefined;
  }
}
