/** The text as a tree of plain data. Every node knows its exact range; nothing is resolved or computed yet. */
import type { FillPlaceSyntax, MapEntry, MapRow } from './fill-syntax.ts';
import type { GridDeclaration } from './grid-syntax.ts';
import type { MaterialDeclaration } from './material-syntax.ts';
import type { CornersSyntax, MotifDeclaration } from './motif-syntax.ts';
import type {
  BandDeclaration,
  BlankDeclaration,
  BoardDeclaration,
  FramePart,
  KitDeclaration,
  PourDeclaration,
} from './object-syntax.ts';
import type { ArcForm, OutlineDeclaration, PathStep } from './outline-syntax.ts';
import type { PanelDeclaration, PanelShapeSyntax } from './panel-syntax.ts';
import type { LineSyntax, PlaceSyntax } from './place-syntax.ts';
import type { Expression, MoneySyntax, Name, Node, Phrase, TextLiteral } from './syntax-nodes.ts';
import type { WorkDeclaration } from './work-syntax.ts';

/** `use "motifs.lap"`, or `use motifs` for a library that comes with the program. */
export interface UseDeclaration extends Phrase {
  readonly kind: 'use';
  readonly source: ({ readonly kind: 'file' } & TextLiteral) | ({ readonly kind: 'library' } & Name);
}

export interface TitleDeclaration extends Phrase {
  readonly kind: 'title';
  readonly text: TextLiteral;
}

export interface UnitsDeclaration extends Phrase {
  readonly kind: 'units';
  readonly unit: 'mm' | 'cm' | 'm' | 'in' | 'ft';
}

export interface LetDeclaration extends Phrase {
  readonly kind: 'let';
  readonly name: Name;
  readonly value: Expression;
}

export type BlockDeclaration =
  | MaterialDeclaration
  | GridDeclaration
  | MotifDeclaration
  | OutlineDeclaration
  | PanelDeclaration
  | BlankDeclaration
  | BandDeclaration
  | PourDeclaration
  | BoardDeclaration
  | WorkDeclaration
  | KitDeclaration;

export type Declaration = UseDeclaration | TitleDeclaration | UnitsDeclaration | LetDeclaration | BlockDeclaration;

export type Property = BlockDeclaration['properties'][number];

export interface SyntaxTree extends Node {
  readonly declarations: readonly Declaration[];
  /** Words of phrases that could not be read: they may be names given there, so using them is no second error. */
  readonly unreadNames: readonly Name[];
  /** Keywords of unread phrases that give a name but show none, such as `strip { … }`: any strip may be that one. */
  readonly unnamed: readonly string[];
}

/** Every node that has a kind. Each kind is of one type of node, so the kind alone tells what a node holds. */
export type TreeNode =
  | Declaration
  | UseDeclaration['source']
  | Property
  | FramePart
  | MapEntry
  | MapRow
  | FillPlaceSyntax
  | CornersSyntax
  | PanelShapeSyntax
  | ArcForm
  | PathStep['source']
  | PlaceSyntax
  | LineSyntax
  | Expression
  | MoneySyntax;

/** The nodes of a kind. */
export type NodeOf<Kind extends TreeNode['kind']> = TreeNode extends infer Each
  ? Each extends { readonly kind: infer Own }
    ? Kind extends Own
      ? Each
      : never
    : never
  : never;
