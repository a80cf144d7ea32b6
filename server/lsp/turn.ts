/** Where there is no `setImmediate`, in a browser: a timer would be held back by four milliseconds. */
function channelTurn(): (call: () => void) => void {
  const { port1, port2 } = new MessageChannel();
  const calls: (() => void)[] = [];
  port1.addEventListener('message', () => calls.shift()?.());
  port1.start();
  return (call) => {
    calls.push(call);
    port2.postMessage(null);
  };
}

/** Calls back with the next turn of the event loop: messages that have come in by then are read first. */
export const nextTurn: (call: () => void) => void =
  typeof setImmediate === 'function' ? (call) => void setImmediate(call) : channelTurn();
