/** The colour of a tee on all holes, chosen with the system's own colour field. */

import type { DocumentFeature } from '../../../core/course/document.ts';
import { propertiesOf } from '../../../core/course/document.ts';
import { setProperties } from '../../../core/course/edits/set-properties.ts';
import { markersOfTee, TEE_COLOUR_MEMBER, teeColourOf } from '../../../core/course/tee-colour.ts';
import { mayEdit } from '../drawing-state.ts';
import { useDesk, useDrawing } from '../use-drawing.ts';
import { useWords } from '../../state/use-words.ts';

/** Where the colour field begins for a tee that has none. */
const FIRST_COLOUR = '#ffffff';

export function TeeColourField({ marker }: { readonly marker: DocumentFeature }) {
  const words = useWords();
  const desk = useDesk();
  const editable = useDrawing(mayEdit);
  const colour = teeColourOf(propertiesOf(marker));
  const write = (value: string): void => {
    desk.attempt((document) =>
      setProperties(document, markersOfTee(document, marker), { [TEE_COLOUR_MEMBER]: value }),
    );
  };
  return (
    <div class="value-field">
      <label for="tee-colour">{words.drawing.tees.colour}</label>
      <span>
        <input
          id="tee-colour"
          type="color"
          value={colour ?? FIRST_COLOUR}
          disabled={!editable}
          onChange={(event) => write(event.currentTarget.value)}
        />
        {colour === undefined ? (
          <span class="faint">{words.drawing.tees.noColour}</span>
        ) : (
          <button type="button" class="small-button" disabled={!editable} onClick={() => write('')}>
            {words.drawing.tees.none}
          </button>
        )}
      </span>
    </div>
  );
}
