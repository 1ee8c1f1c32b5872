import type { aerial as en } from '../en/aerial'

export const aerial: typeof en = {
  title: 'Imagen desde arriba',
  note: 'Tu propia foto del huerto, debajo del mapa',
  lead: 'Pon debajo del mapa una foto del huerto tomada justo desde arriba. Usa una tuya o que puedas usar. Los jefes de cuadrilla y responsables la ven cuando la piden; los teléfonos de la cuadrilla no la descargan.',
  choose: 'Elegir una imagen',
  chooseOther: 'Elegir otra imagen',
  working: 'Haciéndola más pequeña en este dispositivo…',
  stripped:
    'Aquí se hace más pequeña y se quita lo que la cámara escribió en ella, como el lugar y la hora.',
  notRead: 'Esto no es una imagen que se pueda leer. Elige un JPEG o PNG.',
  tooLarge:
    'Esta imagen no se puede hacer lo bastante pequeña. Elige otra menor o recórtala al huerto.',
  pointsTitle: 'Tres árboles que reconoces en ella',
  pointsNote:
    'Elige árboles alejados y que no estén en línea. Toca cada uno en la imagen, o escribe a qué distancia está de la izquierda y de arriba, y luego escribe su placa.',
  point: (no) => `Árbol ${no}`,
  whichPoint: '¿Qué árbol tocas?',
  picture: 'La imagen. Toca donde está el árbol.',
  fromLeft: 'Desde la izquierda, %',
  fromTop: 'Desde arriba, %',
  writeShare: 'Escribe un número de 0 a 100.',
  tag: 'Su placa',
  noTree: 'No hay tal árbol. Escríbelo como en su placa, por ejemplo S 7·14.',
  noPlace: 'Este árbol aún no tiene lugar en el mapa. Elige otro que lo tenga.',
  opacity: 'Cuánto se ve',
  weaker: 'Menos',
  stronger: 'Más',
  preview: 'Así quedará debajo del mapa',
  notYet: 'Indica los tres árboles y la verás aquí.',
  oneLine: 'Los tres están casi en línea. Elige uno más hacia un lado.',
  mirrored: 'La imagen quedaría como en un espejo: dos de los árboles están cambiados.',
  stretched: (times) =>
    `La imagen se estiraría ${times} veces en una dirección. Seguramente uno de los tres es otro árbol.`,
  save: 'Ponerla debajo del mapa',
  saved: 'Está debajo del mapa.',
  remove: 'Quitar la imagen',
  show: 'Imagen',
  showTiles: 'Terreno de otro sitio',
  hideTiles: 'Sin el terreno',
  tilesFrom: (host: string) =>
    `Las imágenes vienen de ${host}. Este dispositivo las pide allí, y ese servidor ve qué terreno se mira.`,
  hide: 'Ocultar la imagen',
  coming: 'Descargando la imagen…',
  notCome: 'La imagen no ha llegado. Inténtalo cuando haya señal.',
}
