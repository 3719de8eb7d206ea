import type { Turn } from '../turn.js';

/** Where talk goes on that a post answers: a thread, or without one the main line of a direct message. */
export function postPlace(channel: string, threadTs: string | undefined): Required<Pick<Turn, 'place' | 'address'>> {
  return {
    place: threadTs === undefined ? `dm:${channel}` : `thread:${channel}:${threadTs}`,
    address: { to: 'post', channel, threadTs },
  };
}
