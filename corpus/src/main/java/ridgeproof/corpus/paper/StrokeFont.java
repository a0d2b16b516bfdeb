package ridgeproof.corpus.paper;

import java.util.ArrayList;
import java.util.List;

/**
 * Letters as strokes on a grid four wide and six high: for each letter polylines, with a comma
 * between; each point is two digits, across and down.
 */
final class StrokeFont {

  static final int WIDTH = 4;
  static final int HEIGHT = 6;

  private StrokeFont() {}

  /** The strokes of a letter, each as x and y in turn; none for what has no strokes. */
  static List<double[]> strokes(char letter) {
    List<double[]> strokes = new ArrayList<>();
    for (String line : points(letter).split(",")) {
      double[] stroke = new double[line.length()];
      for (int i = 0; i < stroke.length; i++) {
        stroke[i] = line.charAt(i) - '0';
      }
      if (stroke.length > 0) {
        strokes.add(stroke);
      }
    }
    return strokes;
  }

  private static String points(char letter) {
    return switch (letter) {
      case 'A' -> "062046,1434";
      case 'B' -> "06003041423303,3344453606";
      case 'C' -> "4130100105163645";
      case 'D' -> "00062644422000";
      case 'E' -> "40000646,0333";
      case 'F' -> "400006,0333";
      case 'G' -> "41301001051636454323";
      case 'H' -> "0006,4046,0343";
      case 'I' -> "2026";
      case 'L' -> "000646";
      case 'M' -> "0600234046";
      case 'N' -> "06004640";
      case 'P' -> "06003041423303";
      case 'R' -> "06003041423303,2346";
      case 'S' -> "413010010213334445361605";
      case 'T' -> "0040,2026";
      case 'U' -> "000516364540";
      case 'X' -> "0046,4006";
      case 'Y' -> "002340,2326";
      case '1' -> "112026";
      case '2' -> "01103041420646";
      case '3' -> "0110304142334445361605";
      case '4' -> "36300444";
      case '5' -> "400003334445361605";
      case '6' -> "30100105163645443303";
      case '7' -> "004016";
      case '8' -> "13020110304142331304051636454433";
      case '9' -> "43130201103041453616";
      case '.' -> "2526";
      case 'O', '0' -> "103041453616050110";
      default -> "";
    };
  }
}
