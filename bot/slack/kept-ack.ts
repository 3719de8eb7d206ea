import type { App, Receiver, ReceiverEvent } from '@slack/bolt';

/**
 * A receiver whose acknowledgement waits for the listeners. Bolt acknowledges an event before they run, and in Socket
 * Mode sends that at once; here it is kept until they are done, and never sent when one throws, so that Slack delivers
 * again.
 */
export function keptAck(receiver: Receiver): Receiver {
  return {
    // Receivers call nothing of an app but processEvent.
    init: (app) => receiver.init({ processEvent: (event: ReceiverEvent) => processed(app, event) } as App),
    start: (...args) => receiver.start(...args),
    stop: (...args) => receiver.stop(...args),
  };
}

async function processed(app: App, event: ReceiverEvent): Promise<void> {
  let send: (() => Promise<void>) | undefined;
  const ack: ReceiverEvent['ack'] = async (response) => {
    send = () => event.ack(response);
  };
  await app.processEvent({ ...event, ack });
  await send?.();
}
