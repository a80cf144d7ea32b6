/** One call for many that come close after each other. */
export interface Debounced {
  /** Requests a call; it is made once no request has come for a while. */
  ask(): void;
  cancel(): void;
}

/** @param delay time without another request before the call, ms */
export function debounce(call: () => void, delay: number): Debounced {
  let timer: ReturnType<typeof setTimeout> | undefined;
  return {
    ask() {
      clearTimeout(timer);
      timer = setTimeout(call, delay);
    },
    cancel() {
      clearTimeout(timer);
    },
  };
}
