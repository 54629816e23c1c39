/** Keys that work anywhere in the course room. */

import { useEffect } from 'preact/hooks';
import { useDesk } from './use-drawing.ts';

export function useRoomKeys(showKeys: () => void): void {
  const desk = useDesk();
  useEffect(() => {
    const pressed = (event: KeyboardEvent): void => {
      const isTyping =
        event.target instanceof HTMLInputElement ||
        event.target instanceof HTMLTextAreaElement ||
        event.target instanceof HTMLSelectElement;
      if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === 's') {
        event.preventDefault();
        // a field that is being typed in takes its value in first
        if (isTyping && event.target instanceof HTMLElement) event.target.blur();
        void desk.files.save().then((saved) => {
          if (saved) desk.say(desk.words().courseFile.savedNow);
        });
      } else if (event.key === '?' && !isTyping) {
        event.preventDefault();
        showKeys();
      } else if (event.key === 'F6') {
        event.preventDefault();
        desk.stage.current?.element.focus();
      }
    };
    window.addEventListener('keydown', pressed);
    return () => window.removeEventListener('keydown', pressed);
  }, [desk, showKeys]);
}
