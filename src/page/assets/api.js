// The requests of the page to its server.

import { say } from './words.js';

/**
 * @typedef {{name: string, text: string}} Text
 * @typedef {{job: Text, machine?: Text}} Texts
 * @typedef {{what: string, help: string, errors?: any[]}} Problem
 */

/**
 * The running request of each channel. A newer request on a channel ends the older one, and the server stops its work.
 */
const underWay = new Map();

/** A request that was ended by a newer one. */
export class Superseded extends Error {}

/** An answer that is a problem. */
export class Refused extends Error {
  /** @param {Problem} problem @param {number} status */
  constructor(problem, status) {
    super(problem.what);
    this.problem = problem;
    this.status = status;
  }
}

/** @param {string} channel @param {string} path @param {any} [body] */
async function send(channel, path, body) {
  underWay.get(channel)?.abort();
  const control = new AbortController();
  underWay.set(channel, control);
  try {
    const asked = body === undefined
      ? { signal: control.signal }
      : { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(body), signal: control.signal };
    const response = await fetch(path, asked);
    if (!response.ok) {
      const problem = await response.json().catch(() => ({ what: say('page-server-status', { status: response.status }), help: '' }));
      throw new Refused(problem, response.status);
    }
    return response;
  } catch (error) {
    if (control.signal.aborted) throw new Superseded();
    if (error instanceof Refused) throw error;
    throw new Refused({ what: say('page-server-silent'), help: say('page-server-silent-help') }, 0);
  } finally {
    if (underWay.get(channel) === control) underWay.delete(channel);
  }
}

/** Asks for JSON. @param {string} path @param {any} [body] @param {string} [channel] */
export async function ask(path, body, channel = path) {
  const response = await send(channel, path, body);
  return response.json();
}

/** Ends the running request of a channel. @param {string} channel */
export function drop(channel) {
  underWay.get(channel)?.abort();
}

/** Moves the running request of a channel to another channel. @param {string} channel @param {string} other */
export function hand(channel, other) {
  const control = underWay.get(channel);
  if (!control) return;
  underWay.delete(channel);
  underWay.get(other)?.abort();
  underWay.set(other, control);
}

/** Does one request at a time. Of the requests that came meanwhile only the newest is done next. */
export function latest(work) {
  let busy = false;
  /** @type {any} */
  let next = null;
  return async function run(...given) {
    if (busy) {
      next?.settle(null);
      return new Promise((settle) => { next = { given, settle }; });
    }
    busy = true;
    try {
      return await work(...given);
    } catch (error) {
      if (error instanceof Refused) return { refused: error.problem };
      if (error instanceof Superseded) return null;
      throw error;
    } finally {
      busy = false;
      const then = next;
      next = null;
      if (then) run(...then.given).then(then.settle);
    }
  };
}

/** Asks for a file: its name and content. @param {string} path @param {any} body */
export async function file(path, body) {
  const response = await send(path, path, body);
  const name = /filename="([^"]+)"/.exec(response.headers.get('content-disposition') ?? '')?.[1] ?? 'plan';
  return { name, blob: await response.blob() };
}

/** Lets the browser save something. @param {string} name @param {Blob} blob */
export function save(name, blob) {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(blob);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10000);
}
