import { describe, expect, it } from 'vitest';
import { readArguments, usage } from '../../../electron/launcher/arguments.ts';

const wanted = (...args: string[]) => {
  const read = readArguments(args, '/home/me');
  if (!read.ok) throw new Error(read.error);
  return read.value;
};

describe('the launcher’s arguments', () => {
  it('may be left out', () => {
    expect(wanted()).toEqual({
      isDemo: false,
      opensBrowser: true,
      mustUseBrowser: false,
      workspace: null,
      port: 0,
      showsHelp: false,
    });
  });

  it('say what to open, where and how', () => {
    expect(wanted('--demo', '--workspace', 'courses')).toMatchObject({
      isDemo: true,
      workspace: '/home/me/courses',
    });
    expect(wanted('--loopback', '--port', '8123')).toMatchObject({ mustUseBrowser: true, port: 8123 });
    expect(wanted('--no-browser')).toMatchObject({ opensBrowser: false, mustUseBrowser: true });
    expect(wanted('-h').showsHelp).toBe(true);
  });

  it.each([
    ['--demos'],
    ['--port', '80'],
    ['--port', '70000'],
    ['--port', 'x'],
    ['--workspace', ''],
    ['stray'],
  ])('%s %s is refused with a reason', (...args) => {
    const read = readArguments(args, '/');
    expect(read.ok ? '' : read.error).not.toBe('');
  });

  it('are all explained', () => {
    for (const flag of ['--demo', '--workspace', '--loopback', '--port', '--no-browser'])
      expect(usage).toContain(flag);
  });
});
