-- Blocks, cultivars and trees: identity only. What is done to a tree belongs to a round.

create table public.blocks (
  orchard_id uuid not null constraint blocks_orchard references public.orchards on delete cascade,
  no integer not null,
  code text not null constraint blocks_code_length check (char_length(code) between 1 and 4),
  name text not null constraint blocks_name_length check (char_length(name) between 1 and 60),
  row_spacing_m numeric(5, 2) not null constraint blocks_row_spacing_range check (row_spacing_m between 0.5 and 30),
  tree_spacing_m numeric(5, 2) not null constraint blocks_tree_spacing_range check (tree_spacing_m between 0.5 and 30),
  bearing_deg numeric(5, 2) constraint blocks_bearing_range check (bearing_deg >= 0 and bearing_deg < 360),
  first_lat_e7 integer,
  first_lon_e7 integer,
  tagged_end text not null default 'low' constraint blocks_tagged_end_known check (tagged_end in ('low', 'high')),
  constraint blocks_key primary key (orchard_id, no),
  constraint blocks_code unique (orchard_id, code)
);
comment on column public.blocks.tagged_end is 'The end of each row where its tag hangs: at its lowest or highest place.';

create table public.cultivars (
  orchard_id uuid not null constraint cultivars_orchard references public.orchards on delete cascade,
  no integer not null,
  species text not null,
  name text not null constraint cultivars_name_length check (char_length(name) between 1 and 60),
  habit text not null default 'unknown' constraint cultivars_habit_known check (habit in ('spur', 'shoot', 'both', 'unknown')),
  buds text not null default 'unknown' constraint cultivars_buds_known check (buds in ('base', 'middle', 'tip', 'unknown')),
  constraint cultivars_key primary key (orchard_id, no),
  constraint cultivars_name unique (orchard_id, species, name)
);
comment on column public.cultivars.habit is 'Which wood carries the fruit buds. Unknown stays unknown.';
comment on column public.cultivars.buds is 'Where along last year''s shoots most fruit buds sit. Unknown stays unknown, and is not shortened.';

create table public.trees (
  orchard_id uuid not null,
  no integer not null constraint trees_no_positive check (no > 0),
  block_no integer not null,
  row_no integer not null constraint trees_row_positive check (row_no > 0),
  place integer not null constraint trees_place_positive check (place > 0),
  species text not null,
  cultivar_no integer,
  size_class text constraint trees_size_class_known check (size_class in ('young', 'small', 'medium', 'large')),
  planted_year integer constraint trees_planted_year_range check (planted_year between 1700 and 2200),
  height_cm integer constraint trees_height_range check (height_cm between 10 and 5000),
  trunk_cm numeric(5, 1) constraint trees_trunk_range check (trunk_cm > 0 and trunk_cm < 1000),
  asks_saw boolean not null default false,
  life text not null default 'standing' constraint trees_life_known check (life in ('standing', 'dead', 'removed', 'gap')),
  lat_e7 integer constraint trees_lat_range check (lat_e7 between -900000000 and 900000000),
  lon_e7 integer constraint trees_lon_range check (lon_e7 between -1800000000 and 1800000000),
  constraint trees_key primary key (orchard_id, no),
  constraint trees_block foreign key (orchard_id, block_no) references public.blocks (orchard_id, no) on delete no action,
  constraint trees_cultivar foreign key (orchard_id, cultivar_no) references public.cultivars (orchard_id, no) on delete no action,
  constraint trees_position_whole check ((lat_e7 is null) = (lon_e7 is null))
);
create unique index trees_one_a_place on public.trees (orchard_id, block_no, row_no, place) where life <> 'removed';
comment on column public.trees.no is 'Unique in the orchard for ever; never used again.';

create table public.tree_sheets (
  orchard_id uuid not null constraint tree_sheets_orchard references public.orchards on delete cascade,
  version integer not null,
  body text not null,
  constraint tree_sheets_key primary key (orchard_id, version)
);
comment on table public.tree_sheets is
  'What rarely changes about trees, one text a version, as columns of integers: it costs a millisecond to serve, where ten thousand objects cost a hundred.';

alter table public.blocks enable row level security;
alter table public.cultivars enable row level security;
alter table public.trees enable row level security;
alter table public.tree_sheets enable row level security;
