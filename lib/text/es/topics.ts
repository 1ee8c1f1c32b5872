import type { topics as en } from '../en/topics'

export const topics: typeof en = {
  stop_signal: {
    title: 'Conoce la señal que para todo el trabajo',
    says: [
      'Cualquiera puede parar el trabajo. Dilo en voz alta; el teléfono nunca es la alarma.',
      'Con la señal: herramientas al suelo, sal de debajo de los árboles y ve al punto de encuentro para el recuento.',
      'No se sigue hasta que un jefe de cuadrilla se lo dice a cada persona.',
    ],
  },
  tools: {
    title: 'Mira tu herramienta antes de fiarte de ella',
    says: [
      'Guantes y protección de ojos antes del primer corte.',
      'Lleva las cuchillas cerradas o en su funda. Nunca cortes hacia tu otra mano.',
      'Una herramienta floja, sin filo o con grietas se aparta, fuera de uso.',
    ],
  },
  off_today: {
    title: 'Deja los árboles que hoy no se podan',
    says: [
      'Aquí no se pueden tomar, y tampoco se podan de paso.',
      'Una herida a destiempo deja entrar enfermedades, o el tiempo hace peligroso el trabajo.',
      'Solo un jefe de cuadrilla los vuelve a permitir.',
    ],
  },
  ladders: {
    title: 'Asienta la escalera, y baja para moverla',
    says: [
      'Solo quien tiene la habilidad, y de dos en dos. La tercera pata cuesta arriba, todas las patas en suelo firme.',
      'La hebilla del cinturón entre los largueros. Nunca pises los dos peldaños de arriba.',
      'Una escalera que se volcó no se usa hasta que la mire un jefe de cuadrilla. En la escalera, teléfono guardado.',
    ],
  },
  saws: {
    title: 'Corta con serrucho solo lo que puedes sujetar y ver caer',
    says: [
      'Solo quien tiene la habilidad. Nadie debajo ni al lado de la rama.',
      'Una rama pesada sale en tres cortes: desde abajo, desde arriba más afuera, y el tocón junto al collar.',
      'Lo demasiado grueso o alto no es tuyo: avisa.',
    ],
  },
  minors: {
    title: 'Jóvenes: los pies en el suelo',
    says: [
      'Si eres menor: sin escalera, sin serrucho y con el adulto que responde por ti presente.',
      'Nadie les da un serrucho ni les sujeta una escalera, tampoco un momento.',
      'Muéstrales cómo, y quédate donde se vean.',
    ],
  },
  keep_out: {
    title: 'No entres en los árboles cerrados',
    says: [
      'Un árbol marcado para el arborista con licencia está cerrado, y todo lo que alcanza.',
      'No pases, no descanses ni dejes herramientas debajo.',
      'Solo un responsable lo abre otra vez.',
    ],
  },
  lines: {
    title: 'Lejos de la línea eléctrica',
    says: [
      'Nada de podar, trepar ni apoyar nada en las filas cerradas por ella.',
      'Lleva escaleras y pértigas en horizontal.',
      '¿Madera que toca la línea? Retrocede, aparta a los demás, llama a tu jefe de cuadrilla.',
    ],
  },
  slope: {
    title: 'Cuidado con la pendiente',
    says: [
      'Ponte por encima de la rama que cortas, nunca por debajo.',
      'Sobre hierba mojada ve despacio y de través, no recto hacia abajo.',
      'Pon la escalera con la tercera pata cuesta arriba. ¿Demasiada pendiente para estar firme? Deja el árbol y dilo.',
    ],
  },
  wet: {
    title: 'La madera mojada resbala, y deja entrar enfermedades',
    says: [
      'Prueba cada paso. Corteza, peldaños y mangos mojados resbalan.',
      'Sécate las manos y seca el mango antes de cortar.',
      'Si llueve sobre los árboles, tu jefe de cuadrilla dice qué se poda todavía.',
    ],
  },
  heat: {
    title: 'Bebe antes de tener sed',
    says: [
      'En el punto de encuentro hay agua y sombra. Descansa allí cuando quieras.',
      '¿Dolor de cabeza, mareo o ya no sudas? Para, siéntate a la sombra, llama a tu jefe de cuadrilla.',
      'Mira también por quien está a tu lado.',
    ],
  },
  cold: {
    title: 'Calienta las manos antes de cortar',
    says: [
      'Las manos frías son lentas. Haz pausas para calentarlas.',
      'La corteza y los peldaños pueden tener hielo. Prueba antes de pisar.',
      '¿Mojado y con frío? Ve a calentarte. Nadie pregunta por qué.',
    ],
  },
  wind: {
    title: 'Con ráfagas, quédate en el suelo',
    says: [
      'Tu jefe de cuadrilla prohíbe las escaleras cuando hay ráfagas. Baja al momento.',
      'Mira arriba antes de pasar bajo un árbol: con viento cae madera rota.',
      'Una rama que cuelga o cruje no es para ti: aléjate y márcala.',
    ],
  },
  thunder: {
    title: 'Truenos: abajo enseguida, y lejos de los árboles',
    says: [
      '¿Oyes truenos? Dilo en voz alta, baja, deja escaleras y pértigas en el suelo.',
      'Entra en un edificio o en un vehículo de techo rígido. Un árbol, una carpa o un cobertizo abierto no protegen.',
      'Espera 30 minutos desde el último trueno; tu jefe de cuadrilla dice cuándo se sigue.',
    ],
  },
  disease: {
    title: 'No lleves la enfermedad de un árbol a otro',
    says: [
      'Los árboles marcados, solo si te los asignan, y después de los sanos.',
      'Limpia la cuchilla después de cada árbol marcado y dilo aquí.',
      'Aparta su madera del resto.',
    ],
  },
  nests: {
    title: 'Abejas o avispas: aléjate despacio',
    says: [
      'No agites los brazos, no corras. Marca el árbol.',
      'Antes de empezar, dile a tu jefe de cuadrilla si una picadura es peligrosa para ti.',
      '¿Te pica y te falta el aire, o se te hincha la cara? Llama a una ambulancia enseguida.',
    ],
  },
}
