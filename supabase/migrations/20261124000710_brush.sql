-- Cut wood on the ground: whose trees' wood is carried away, and where that of a row goes.

create table public.brush_hauled (
  orchard_id uuid not null,
  round_id uuid not null,
  tree_no integer not null,
  claim_id uuid,
  by_person_id uuid not null,
  at timestamptz not null,
  constraint brush_hauled_key primary key (round_id, tree_no),
  constraint brush_hauled_round foreign key (orchard_id, round_id) references public.rounds (orchard_id, id) on delete cascade,
  constraint brush_hauled_tree foreign key (orchard_id, tree_no) references public.trees (orchard_id, no) on delete no action,
  constraint brush_hauled_claim foreign key (orchard_id, claim_id) references public.claims (orchard_id, id) on delete cascade
);
comment on table public.brush_hauled is
  'Trees whose wood is carried away. Every change of a tree''s work takes it out again: then new wood lies there.';

create table public.brush_ways (
  orchard_id uuid not null,
  round_id uuid not null,
  block_no integer not null,
  row_no integer not null,
  goes text not null constraint brush_ways_goes_known check (goes in ('burn', 'chip', 'bag', 'pile')),
  said_by uuid not null,
  said_at timestamptz not null,
  constraint brush_ways_key primary key (round_id, block_no, row_no),
  constraint brush_ways_round foreign key (orchard_id, round_id) references public.rounds (orchard_id, id) on delete cascade,
  constraint brush_ways_block foreign key (orchard_id, block_no) references public.blocks (orchard_id, no) on delete no action
);
comment on table public.brush_ways is 'Where the wood of a row goes, as a lead said. Nothing said: one asks.';

alter table public.brush_hauled enable row level security;
alter table public.brush_ways enable row level security;
