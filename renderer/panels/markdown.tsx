/**
 * Draws the help pages' Markdown. The library only splits the text into tokens; every element is made by us, so
 * raw HTML in a page is shown as text and links lead nowhere outside. An image is one of our own pictures or nothing.
 */

import type { ComponentChildren, VNode } from 'preact';
import { lexer, type MarkedToken, type Token, type Tokens } from 'marked';
import { HelpPicture, pictureName } from '../help/pictures/help-picture.tsx';

export function Markdown({ text }: { readonly text: string }): VNode {
  return <article class="prose">{lexer(text).map((token, i) => block(token, i))}</article>;
}

/** Tokens of extensions, of which there are none, would be of another type. */
function known(token: Token): MarkedToken {
  return token as MarkedToken;
}

function block(raw: Token, key: number): ComponentChildren {
  const token = known(raw);
  switch (token.type) {
    case 'heading':
      return heading(token.depth, inlines(token.tokens), key);
    case 'paragraph':
      if (pictureOf(token) !== null) return <HelpPicture key={key} name={pictureOf(token)!} />;
      return <p key={key}>{inlines(token.tokens)}</p>;
    case 'list': {
      const items = token.items.map((item, i) => (
        <li key={i}>{item.tokens.map((inner, k) => block(inner, k))}</li>
      ));
      return token.ordered ? <ol key={key}>{items}</ol> : <ul key={key}>{items}</ul>;
    }
    case 'blockquote':
      return <blockquote key={key}>{token.tokens.map((inner, i) => block(inner, i))}</blockquote>;
    case 'code':
      return (
        <pre key={key}>
          <code>{token.text}</code>
        </pre>
      );
    case 'table':
      return (
        <table key={key}>
          <thead>
            <tr>
              {token.header.map((cell, i) => (
                <th key={i} scope="col">
                  {inlines(cell.tokens)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {token.rows.map((row, r) => (
              <tr key={r}>
                {row.map((cell, i) => (
                  <td key={i}>{inlines(cell.tokens)}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      );
    case 'hr':
      return <hr key={key} />;
    case 'space':
    case 'def':
      return null;
    case 'html': {
      // Marks where a room's part of the guide begins; any other markup is shown as text.
      const room = /^<!-- room: ([a-z]+) -->\s*$/u.exec(token.raw)?.[1];
      return room === undefined ? token.raw : <span key={key} data-room={room} />;
    }
    case 'text':
      return token.tokens === undefined ? token.text : inlines(token.tokens);
    default:
      return token.raw;
  }
}

/** A paragraph that is nothing but one of our own pictures. */
function pictureOf({ tokens }: Tokens.Paragraph): string | null {
  const [only] = tokens;
  return tokens.length === 1 && only?.type === 'image' ? pictureName((only as Tokens.Image).href) : null;
}

/** The page has its own first heading, so a page's title is of the second rank. */
function heading(depth: number, children: ComponentChildren, key: number): VNode {
  if (depth === 1) return <h2 key={key}>{children}</h2>;
  if (depth === 2) return <h3 key={key}>{children}</h3>;
  return <h4 key={key}>{children}</h4>;
}

function inlines(tokens: readonly Token[]): ComponentChildren {
  return tokens.map((token, i) => inline(known(token), i));
}

function inline(token: MarkedToken, key: number): ComponentChildren {
  switch (token.type) {
    case 'strong':
      return <strong key={key}>{inlines(token.tokens)}</strong>;
    case 'em':
      return <em key={key}>{inlines(token.tokens)}</em>;
    case 'codespan':
      return <code key={key}>{token.text}</code>;
    case 'br':
      return <br key={key} />;
    case 'link':
      return <span key={key}>{inlines(token.tokens)}</span>;
    case 'image':
      return null;
    case 'escape':
      return token.text;
    case 'text':
      return token.tokens === undefined ? token.text : inlines(token.tokens);
    default:
      return token.raw;
  }
}
