import { useEffect, useState } from 'preact/hooks';

/** A value that pages watch: set it, and whoever shows it draws anew. */
export class Store<Value> {
  private readonly watchers = new Set<() => void>();

  constructor(private current: Value) {}

  get value(): Value {
    return this.current;
  }

  set(value: Value): void {
    this.current = value;
    for (const watcher of this.watchers) watcher();
  }

  watch(watcher: () => void): () => void {
    this.watchers.add(watcher);
    return () => this.watchers.delete(watcher);
  }
}

/** The value of a store in a component. */
export function useStore<Value>(store: Store<Value>): Value {
  const [, draw] = useState(0);
  useEffect(() => {
    draw((times) => times + 1);
    return store.watch(() => draw((times) => times + 1));
  }, [store]);
  return store.value;
}
