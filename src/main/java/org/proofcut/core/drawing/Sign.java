package org.proofcut.core.drawing;

/**
 * Safety signs of our own drawing. Shape and colour follow ISO 3864-1 (blue disc: must; red ring
 * with a bar: must not; yellow triangle: can hurt; green square: safe; red square: fire), the
 * symbols are plain shapes of ours; {@link #see} names the standard symbol of the same meaning.
 *
 * <p>Blue and red hardly differ in brightness, so a sign is never shown without its word.
 */
public enum Sign {
  EARS(Shape.MUST, "M003", Symbols.HEAD + Symbols.MUFFS),
  EYES(Shape.MUST, "M004", Symbols.HEAD + Symbols.GLASSES),
  DUST_MASK(Shape.MUST, "M016", Symbols.HEAD + Symbols.MASK),
  RESPIRATOR(Shape.MUST, "M017", Symbols.HEAD + Symbols.CARTRIDGES),
  FACE_SHIELD(Shape.MUST, "M013", Symbols.HEAD + Symbols.VISOR),
  GLOVES(Shape.MUST, "M009", Symbols.GLOVE),
  NO_GLOVES(Shape.MUST_NOT, "P028", Symbols.GLOVE),
  APRON(Shape.MUST, "M026", Symbols.APRON),
  FOOTWEAR(Shape.MUST, "M008", Symbols.BOOT),
  CLOSE_CLOTHING(Shape.MUST, "M010", Symbols.JACKET),
  HAIR_TIED(Shape.MUST, "", Symbols.TIED_HAIR),
  UNPLUG(Shape.MUST, "M006", Symbols.PLUG),
  READ_MANUAL(Shape.MUST, "M002", Symbols.BOOK),
  GUARD(Shape.MUST, "M027", Symbols.GUARDED_BLADE),
  WASH_HANDS(Shape.MUST, "M011", Symbols.TAP_AND_HAND),
  MUST(Shape.MUST, "M001", Symbols.MARK),
  NO_REACHING_IN(Shape.MUST_NOT, "P015", Symbols.HAND_AND_CUTTER),
  GENERAL_WARNING(Shape.CAN_HURT, "W001", Symbols.WARNING_MARK),
  BLADE(Shape.CAN_HURT, "W088", Symbols.HAND_OVER_BLADE),
  DRAWN_IN(Shape.CAN_HURT, "", Symbols.SLEEVE_AND_CUTTER),
  FIRST_AID(Shape.SAFE, "E003", Symbols.CROSS),
  EXTINGUISHER(Shape.FIRE, "F001", Symbols.EXTINGUISHER);

  private static final String BLUE = "#005387";
  private static final String RED = "#9b2423";
  private static final String YELLOW = "#f9a800";
  private static final String GREEN = "#237f52";
  private static final String BLACK = "#15181b";
  private static final String WHITE = "#ffffff";

  private enum Shape {
    MUST,
    MUST_NOT,
    CAN_HURT,
    SAFE,
    FIRE
  }

  private final Shape shape;
  private final String see;
  private final String symbol;

  Sign(Shape shape, String see, String symbol) {
    this.shape = shape;
    this.see = see;
    this.symbol = symbol;
  }

  /** The symbol of ISO 7010 with the same meaning, such as {@code M004}; empty where none is. */
  public String see() {
    return see;
  }

  /** The sign as one {@code <svg>} element without words: they stand beside it. */
  public String svg() {
    var svg = Svg.silent("-4 -4 108 108", "sign");
    switch (shape) {
      case MUST ->
          svg.raw(keyline("<circle cx='50' cy='50' r='50' fill='" + BLUE + "'/>"))
              .raw(inked(WHITE, BLUE));
      case MUST_NOT ->
          svg.raw(keyline("<circle cx='50' cy='50' r='50' fill='" + WHITE + "'/>"))
              .raw(inked(BLACK, WHITE))
              .raw("<g fill='none' stroke='" + RED + "'>")
              .raw("<circle cx='50' cy='50' r='45' stroke-width='10'/>")
              .raw("<path d='M18.2 18.2L81.8 81.8' stroke-width='8'/></g>");
      case CAN_HURT ->
          svg.raw(
                  keyline(
                      "<path d='M50 3L100 92H0z' fill='"
                          + BLACK
                          + "' stroke='"
                          + BLACK
                          + "' stroke-width='4' stroke-linejoin='round'/>"))
              .raw("<path d='M50 13L91 86.5H9z' fill='" + YELLOW + "'/>")
              .raw(inked(BLACK, YELLOW));
      case SAFE ->
          svg.raw(keyline("<path d='M0 0H100V100H0z' fill='" + GREEN + "'/>"))
              .raw(inked(WHITE, GREEN));
      case FIRE ->
          svg.raw(keyline("<path d='M0 0H100V100H0z' fill='" + RED + "'/>")).raw(inked(WHITE, RED));
    }
    return svg.close("svg").toString();
  }

  /** On a dark ground the page gives every sign a white outline. */
  private static String keyline(String outline) {
    return "<g class='keyline'>" + outline + "</g>";
  }

  private String inked(String ink, String ground) {
    return symbol.replace("{ink}", ink).replace("{ground}", ground);
  }

  /** Plain shapes on a field of 100 by 100; {ink} is the symbol's colour, {ground} the sign's. */
  private static final class Symbols {
    static final String HEAD =
        "<path fill='{ink}' d='M50 17C66 17 74 29 74 43C74 60 64 76 50 76C36 76 26 60 26 43"
            + "C26 29 34 17 50 17z'/>"
            + "<path fill='{ink}' d='M38 72V79Q23 81 19 89Q33 99 50 99Q67 99 81 89Q77 81 62 79V72z'/>";
    static final String MUFFS =
        "<path fill='none' stroke='{ground}' stroke-width='15' d='M24 50V38A26 27 0 0 1 76 38V50'/>"
            + "<path fill='none' stroke='{ink}' stroke-width='8' d='M22 46V37A28 26 0 0 1 78 37V46'/>"
            + "<path fill='{ink}' stroke='{ground}' stroke-width='4'"
            + " d='M31 36V66Q31 68 29 68H23Q13 66 13 51Q13 38 23 34H29Q31 34 31 36z"
            + "M69 36V66Q69 68 71 68H77Q87 66 87 51Q87 38 77 34H71Q69 34 69 36z'/>";
    static final String GLASSES =
        "<path fill='{ground}' d='M20 35H80V41L76 44Q75 59 64 59Q54 59 52 48Q50 45 48 48"
            + "Q46 59 36 59Q25 59 24 44L20 41z'/>"
            + "<path fill='{ink}' d='M31 42H44Q43 53 36.500 53Q31 53 31 42zM56 42H69Q69 53 63.500 53Q57 53 56 42z'/>";
    static final String MASK =
        "<path fill='none' stroke='{ground}' stroke-width='4' d='M26 38L36 50M74 38L64 50M29 62L37 63M71 62L63 63'/>"
            + "<path fill='{ground}' d='M50 42Q56 42 60 47L69 52Q71 66 62 73Q50 79 38 73Q29 66 31 52"
            + "L40 47Q44 42 50 42z'/>"
            + "<path fill='none' stroke='{ink}' stroke-width='3' d='M37 57Q50 52 63 57M38 66Q50 62 62 66'/>";
    static final String CARTRIDGES =
        "<path fill='none' stroke='{ground}' stroke-width='4' d='M26 38L38 50M74 38L62 50'/>"
            + "<path fill='{ground}' d='M50 41Q59 42 62 52V68Q57 77 50 77Q43 77 38 68V52Q41 42 50 41z'/>"
            + "<circle cx='30' cy='65' r='15' fill='{ground}'/><circle cx='70' cy='65' r='15' fill='{ground}'/>"
            + "<circle cx='30' cy='65' r='11' fill='{ink}'/><circle cx='70' cy='65' r='11' fill='{ink}'/>"
            + "<circle cx='30' cy='65' r='5' fill='{ground}'/><circle cx='70' cy='65' r='5' fill='{ground}'/>"
            + "<circle cx='50' cy='64' r='5' fill='{ink}'/>";
    static final String VISOR =
        "<path fill='{ground}' d='M20 24H80V36H20z'/><path fill='{ink}' d='M20 26H80V33H20z'/>"
            + "<path fill='none' stroke='{ground}' stroke-width='11' d='M22 37V72Q34 84 50 84Q66 84 78 72V37'/>"
            + "<path fill='none' stroke='{ink}' stroke-width='5' d='M21.500 36V72Q34 85 50 85Q66 85 78.500 72V36'/>"
            + "<path fill='none' stroke='{ground}' stroke-width='4' d='M62 44L44 66M66 55L56 67'/>";
    static final String GLOVE =
        "<g fill='none' stroke='{ink}' stroke-width='10' stroke-linecap='round'>"
            + "<path d='M40 54L37 27M50.500 52V21M61 54L64 27M69 60L75 40M38 66L25 50'/></g>"
            + "<path fill='{ink}' d='M35 50H66L74 58Q73 70 68 76H38L34 66z'/>"
            + "<path fill='{ink}' d='M37 79.500H69V89Q60 92 53 92Q45 92 37 89z'/>";
    static final String APRON =
        "<path fill='none' stroke='{ink}' stroke-width='5' d='M39 33V24A11 11 0 0 1 61 24V33'/>"
            + "<path fill='{ink}' d='M37 31H63Q64 46 75 50V84Q50 92 25 84V50Q36 46 37 31z'/>"
            + "<path fill='none' stroke='{ink}' stroke-width='5' d='M26 53L12 59M74 53L88 59'/>"
            + "<path fill='none' stroke='{ground}' stroke-width='4' d='M36 59H64V74H36z'/>";
    static final String BOOT =
        "<path fill='{ink}' d='M30 18H57L58 48Q62 57 76 59Q87 61 87 71V74H28Q27 60 30 50z'/>"
            + "<path fill='{ink}' d='M28 78H87V84H52V81H46V86H28z'/>"
            + "<path fill='none' stroke='{ground}' stroke-width='4' d='M71 59Q68 66 68 74M46 30H57M46 38H57M47 46H58'/>";
    static final String JACKET =
        "<path fill='{ink}' d='M40 20L50 28L60 20L74 26L85 66L75 69L68 48V83H32V48L25 69L15 66L26 26z'/>"
            + "<path fill='none' stroke='{ground}' stroke-width='3.500' d='M50 28V83M16 61L26 64M84 61L74 64'/>"
            + "<g fill='{ground}'><circle cx='56' cy='42' r='2.500'/><circle cx='56' cy='56' r='2.500'/>"
            + "<circle cx='56' cy='70' r='2.500'/></g>";
    static final String TIED_HAIR =
        "<path fill='{ink}' d='M46 20Q68 20 70 42L76 55L70 58V67Q69 73 60 72L57 72V80Q70 82 75 90"
            + "Q62 99 50 99Q36 98 22 89Q26 81 38 79V68Q26 58 26 42Q27 22 46 20z'/>"
            + "<circle cx='20' cy='37' r='11' fill='{ink}' stroke='{ground}' stroke-width='3'/>"
            + "<path fill='none' stroke='{ground}' stroke-width='4' d='M63 27Q50 31 48 44Q44 58 32 57M27 33L33 45'/>";
    static final String PLUG =
        "<path fill='{ink}' d='M8 44H22Q26 34 38 34H46V66H38Q26 66 22 56H8z'/>"
            + "<path fill='{ink}' d='M46 39H60V45H46zM46 55H60V61H46z'/>"
            + "<path fill='{ink}' d='M72 24H88V76H72z'/>"
            + "<path fill='{ground}' d='M72 39H82V45H72zM72 55H82V61H72z'/>";
    static final String BOOK =
        "<path fill='{ink}' d='M15 30Q34 23 48 32V78Q34 69 15 75zM85 30Q66 23 52 32V78Q66 69 85 75z'/>"
            + "<path fill='none' stroke='{ground}' stroke-width='3.500' d='M22 40Q32 37 41 41M22 50Q32 47 41 51"
            + "M22 60Q32 57 41 61M78 40Q68 37 59 41M78 50Q68 47 59 51M78 60Q68 57 59 61'/>";
    static final String GUARDED_BLADE =
        "<path fill='{ink}' d='M14 58Q14 26 50 26Q86 26 86 58H79Q79 34 50 34Q21 34 21 58z'/>"
            + "<path fill='{ink}' d='M30 66L26 61L32 58L26 57L32 53L29 47L37 47L37 40L44 43L48 37L53 42L59 38L61 44"
            + "L68 43L67 50L74 53L69 57L74 61L70 66z'/>"
            + "<circle cx='50' cy='60' r='5' fill='{ground}'/>"
            + "<path fill='{ink}' d='M10 68H90V77H10z'/>";
    static final String TAP_AND_HAND =
        "<path fill='{ink}' d='M24 20H56Q68 20 68 32V37H57V33Q57 31 54 31H24zM38 12H50V20H38z'/>"
            + "<path fill='{ink}' d='M60 41H65V49H60z'/>"
            + "<path fill='{ink}' d='M16 62L30 56Q36 54 42 56L62 55Q67 55 67 59Q67 62 62 63L50 64L66 64L80 57"
            + "Q85 55 87 59Q88 62 84 64L62 77Q56 80 48 79L32 76L16 82z'/>"
            + "<path fill='{ink}' d='M36 86q-3 5 0 6t3-1t-3-5zM52 86q-3 5 0 6t3-1t-3-5z'/>";
    static final String MARK =
        "<path fill='{ink}' d='M42 18H58L55 62H45z'/><circle cx='50' cy='76' r='8' fill='{ink}'/>";
    static final String WARNING_MARK =
        "<path fill='{ink}' d='M44.500 36H55.500L53.500 65H46.500z'/><circle cx='50' cy='75' r='5.500' fill='{ink}'/>";
    static final String HAND_AND_CUTTER =
        "<path fill='{ink}' d='M14 34H30Q40 34 47 39L58 43Q62 45 61 48Q60 51 56 50L47 48L64 52Q68 53 67 56.500"
            + "Q66 59 62 58L48 55L60 60Q63 62 62 64.500Q60 67 57 66L45 62L51 67Q53 70 51 72Q49 73 46 72L34 64H14z'/>"
            + "<path fill='{ink}' d='M72 30L77 33L81 28L83 34L89 32L88 38L93 40L93 60L88 62L89 68L83 66L81 72L77 67"
            + "L72 70L72 64L66 65L69 60L65 57L70 53L66 49L70 46L66 41L71 41L68 35L73 36z'/>"
            + "<circle cx='83' cy='50' r='5' fill='{ground}'/>";
    static final String HAND_OVER_BLADE =
        "<path fill='{ink}' d='M27 84L22 79L29 77L25 71L32 71L31 65L38 67L39 61L45 64L50 58L55 64"
            + "L61 61L62 67L69 65L68 71L75 71L71 77L78 79L73 84z'/>"
            + "<path fill='none' stroke='{ground}' stroke-width='3' d='M42 84A8 8 0 0 1 58 84'/>"
            + "<g fill='none' stroke='{ink}' stroke-width='4.600' stroke-linecap='round'>"
            + "<path d='M43 42L42 54M48.300 42V57M53.600 42V56M58.500 40L59 52M42 38L35.500 47'/></g>"
            + "<path fill='{ink}' d='M44 25H56L61 41Q61 46 56 46H44Q40 45 40 40z'/>";
    static final String SLEEVE_AND_CUTTER =
        "<path fill='{ink}' d='M45 27H55V37H60V44H40V37H45z'/>"
            + "<path fill='{ink}' d='M43 46H57V84H43z'/>"
            + "<path fill='none' stroke='{ground}' stroke-width='3' d='M42 58L58 51M42 84L58 77'/>"
            + "<path fill='none' stroke='{ground}' stroke-width='10' d='M38 70Q50 76 62 66'/>"
            + "<path fill='none' stroke='{ink}' stroke-width='5' stroke-linecap='round'"
            + " d='M17 82Q23 74 28 79Q33 84 35 76Q37 69 44 71Q56 74 64 68Q68 63 60 61'/>";
    static final String CROSS = "<path fill='{ink}' d='M38 16H62V38H84V62H62V84H38V62H16V38H38z'/>";
    static final String EXTINGUISHER =
        "<path fill='{ink}' d='M36 34Q36 26 46 26H50Q60 26 60 34V88H36z'/>"
            + "<path fill='{ink}' d='M43 18H53V25H43z'/>"
            + "<path fill='none' stroke='{ink}' stroke-width='5' d='M40 16H66M48 20Q24 20 24 40V60'/>"
            + "<path fill='{ink}' d='M19 58H29L31 74H17z'/>"
            + "<path fill='{ink}' d='M76 88Q66 84 68 74Q69 68 74 62Q75 66 78 67Q79 58 76 52Q89 60 89 74Q88 85 80 88"
            + "Q83 80 78 75Q74 80 76 88z'/>"
            + "<path fill='none' stroke='{ground}' stroke-width='4' d='M36 48H60'/>";
  }
}
