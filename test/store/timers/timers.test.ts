import { describe, expect, it } from 'vitest';
import { createTimers } from '../../../src/store/timers/createTimers';
import { secondsLeft } from '../../../src/store/timers/secondsLeft';

const START = Date.parse('2026-03-01T09:00:00.000Z');
const OPEN = { id: 'a', project: 'p', name: 'Wren 14', what: 'open', seconds: 300 } as const;
const CURE = { id: 'b', project: 'p', name: 'Wren 14', what: 'cure', seconds: 86_400 } as const;

/** A device: its clock, and what it keeps. */
const device = (kept: string | null = null) => {
  let [now, text] = [START, kept];
  const clock = { now: () => new Date(now).toISOString() };
  const memory = {
    read: () => text,
    write: (next: string) => {
      text = next;
    },
  };
  return {
    /** What a page that is opened now finds. */
    open: () => createTimers(memory, clock),
    pass: (seconds: number) => {
      now += seconds * 1000;
    },
    kept: () => text,
  };
};

const left = (timers: ReturnType<typeof createTimers>): readonly number[] => {
  const { timers: all, now } = timers.getState();
  return all.map((timer) => secondsLeft(timer, now));
};

describe('clocks', () => {
  it('count down by the wall, several at once', () => {
    const { open, pass } = device();
    const timers = open();
    timers.start(OPEN);
    pass(10);
    timers.start(CURE);
    pass(50);
    timers.tick();
    expect(left(timers)).toEqual([240, 86_350]);
  });

  it('go on over a reload and a sleep', () => {
    const { open, pass } = device();
    open().start(OPEN);
    pass(100);
    const again = open();
    again.tick();
    expect(left(again)).toEqual([200]);
    expect(again.getState().movedBack).toBe(0);
  });

  it('tell once that the time is up, also when it ended while the page was closed', () => {
    const { open, pass } = device();
    const timers = open();
    timers.start(OPEN);
    pass(299);
    expect(timers.tick()).toEqual([]);
    pass(1);
    expect(timers.tick().map(({ id }) => id)).toEqual(['a']);
    pass(1);
    expect(timers.tick()).toEqual([]);
    timers.start({ ...OPEN, id: 'c' });
    pass(1000);
    const again = open();
    expect(again.tick().map(({ id }) => id)).toEqual(['c']);
    expect(left(again)).toEqual([-700]);
  });

  it('begin anew when the same one of the same project is started again, and stop', () => {
    const { open, pass } = device();
    const timers = open();
    timers.start(OPEN);
    pass(60);
    timers.start({ ...OPEN, id: 'again' });
    timers.start({ ...OPEN, id: 'other', project: 'q' });
    expect(timers.getState().timers.map(({ id }) => id)).toEqual(['again', 'other']);
    timers.stop('again');
    expect(
      open()
        .getState()
        .timers.map(({ id }) => id),
    ).toEqual(['other']);
  });

  it('notice a clock that was moved back, and go on from what they showed', () => {
    const { open, pass } = device();
    const timers = open();
    timers.start(OPEN);
    pass(100);
    timers.tick();
    pass(-3600);
    timers.tick();
    expect(left(timers)).toEqual([200]);
    expect(timers.getState().movedBack).toBe(3600);
    pass(50);
    timers.tick();
    expect(left(timers)).toEqual([150]);
    timers.takeNote();
    expect(open().getState().movedBack).toBe(0);
  });

  it('notice it when the page was closed meanwhile', () => {
    const { open, pass } = device();
    const timers = open();
    timers.start(OPEN);
    pass(100);
    timers.tick();
    pass(-7200);
    const again = open();
    again.tick();
    expect(left(again)).toEqual([200]);
    expect(again.getState().movedBack).toBe(7200);
  });

  it('do not mind a second that a network takes back, nor a clock moved while none runs', () => {
    const { open, pass } = device();
    const timers = open();
    timers.start(OPEN);
    pass(10);
    timers.tick();
    pass(-1);
    timers.tick();
    expect(timers.getState().movedBack).toBe(0);
    timers.stop('a');
    pass(-3600);
    timers.start(OPEN);
    expect(timers.getState().movedBack).toBe(0);
    expect(left(timers)).toEqual([300]);
  });

  it('of another tab are found, and none is lost', () => {
    const { open, pass } = device();
    const [one, other] = [open(), open()];
    one.start(OPEN);
    other.start(CURE);
    pass(1);
    one.tick();
    expect(one.getState().timers.map(({ id }) => id)).toEqual(['a', 'b']);
    other.stop('a');
    one.tick();
    expect(one.getState().timers.map(({ id }) => id)).toEqual(['b']);
  });

  it('run where nothing can be kept', () => {
    let now = START;
    const timers = createTimers({ read: () => null, write: () => {} }, { now: () => new Date(now).toISOString() });
    timers.start(OPEN);
    now += 60_000;
    timers.tick();
    expect(left(timers)).toEqual([240]);
    now += 240_000;
    expect(timers.tick()).toHaveLength(1);
    expect(timers.tick()).toEqual([]);
  });

  const sound = { ...OPEN, startedAt: START, heard: false };
  it.each([
    null,
    '',
    '{',
    '[]',
    'null',
    JSON.stringify({ timers: [{ ...sound, seconds: -1 }] }),
    JSON.stringify({ timers: [{ ...sound, what: 'lunch' }] }),
    JSON.stringify({ timers: [{ ...sound, name: 'x'.repeat(300) }] }),
    JSON.stringify({ timers: [{ ...sound, startedAt: '2026' }, 3, null] }),
    JSON.stringify({ timers: {}, seen: -1 }),
  ])('are none where none were kept: %s', (text) => {
    const timers = device(text).open();
    expect(timers.tick()).toEqual([]);
    expect(timers.getState().timers).toEqual([]);
  });

  it('take the sound ones of what was kept', () => {
    const text = JSON.stringify({
      timers: [
        { ...sound, more: 1 },
        { ...sound, id: 4 },
      ],
      seen: START,
      movedBack: 0,
    });
    const timers = device(text).open();
    expect(timers.getState().timers).toEqual([sound]);
  });
});
