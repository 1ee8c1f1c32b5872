import type { sanitation as en } from '../en/sanitation'

export const sanitation: typeof en = {
  below: (length) => `Corta al menos ${length} por debajo de la última señal que veas.`,
  belowWhy: (disease, source) => `Tanto por si es ${disease} (${source}).`,
  noNumber:
    'Corta en madera del todo sana. Ninguna fuente da una medida para esto: pregunta a tu jefe de cuadrilla.',
  disease: {
    eutypa: 'eutipiosis',
    bacterial_canker: 'cancro bacteriano',
    fire_blight: 'fuego bacteriano',
    silver_leaf: 'mal del plomo',
    cytospora: 'cancro por Cytospora',
    brown_rot: 'podredumbre parda',
  },
  clean: {
    each_cut:
      'Limpia la cuchilla después de cada corte en madera enferma, y después de este árbol.',
    each_tree: 'Limpia la cuchilla después de este árbol, antes del siguiente.',
  },
  cleanHow:
    'Alcohol al 70 % durante 30 segundos, o una parte de lejía (cloro) por nueve de agua; luego seca y aceita.',
  wood: {
    carry_away: 'Llévate la madera.',
    bag: 'Mete la madera en bolsas y no la arrastres junto a otros árboles.',
    leave_no_pile: 'Llévate la madera: no puede quedar ningún montón en el huerto.',
  },
  differ: 'Las fuentes no coinciden sobre la limpieza. Esta es la regla de tu huerto.',
  cleanSources:
    'UC IPM: al cortar madera infectada. Universidad de Illinois: solo en la época de crecimiento. Universidad Estatal de Washington: importa más la rapidez.',
}
