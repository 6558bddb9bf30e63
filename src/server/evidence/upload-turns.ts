/**
 * One writer at a time for each upload. Whoever comes later takes over: a phone that lost its signal and tries again
 * must not wait for the request that it gave up, of which the service may not have heard yet.
 */
export class UploadTurns {
  private readonly writing = new Map<
    string,
    { readonly stop: () => void; readonly done: Promise<unknown> }
  >();

  /** @param stop ends the work early; work that must not be ended passes one that does nothing */
  async take<T>(id: string, stop: () => void, work: () => Promise<T>): Promise<T> {
    for (let before = this.writing.get(id); before !== undefined; before = this.writing.get(id)) {
      before.stop();
      await before.done;
    }
    const running = work();
    const turn = { stop, done: this.leave(id, running) };
    this.writing.set(id, turn);
    return running;
  }

  private async leave(id: string, running: Promise<unknown>): Promise<void> {
    await Promise.allSettled([running]);
    this.writing.delete(id);
  }
}
