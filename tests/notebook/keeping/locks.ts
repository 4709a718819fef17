type Granted = (lock: Lock | null) => unknown;

interface Held {
  readonly done: Promise<unknown>;
  readonly steal: () => void;
}

/** The part of the browser's locks that is in use here, by the Web Locks standard: one holder a name, `ifAvailable`, `steal`. */
export function locks(): LockManager {
  const held = new Map<string, Held>();
  const grant = (name: string, work: Granted): Promise<unknown> => {
    let steal: () => void = () => undefined;
    const promise = new Promise<unknown>((resolve, reject) => {
      steal = () => reject(new DOMException("The lock was stolen.", "AbortError"));
      Promise.resolve(work({ name, mode: "exclusive" })).then(resolve, reject);
    });
    const entry: Held = { done: promise.catch(() => undefined), steal };
    held.set(name, entry);
    const end = () => {
      if (held.get(name) === entry) held.delete(name);
    };
    promise.then(end, end);
    return promise;
  };
  const request = async (name: string, options: LockOptions, work: Granted): Promise<unknown> => {
    const holder = held.get(name);
    if (!holder) return grant(name, work);
    if (options.ifAvailable) return work(null);
    if (options.steal) {
      holder.steal();
      return grant(name, work);
    }
    await holder.done;
    return request(name, options, work);
  };
  return { request, query: async () => ({}) } as LockManager;
}
