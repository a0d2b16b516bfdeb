package ridgeproof.corpus.scenario;

/**
 * A person who does not exist, as the Type-2 record tells of them.
 *
 * @param person seed of the ten fingers; 0 for the seed of the story
 * @param name field 2.018
 * @param birthDate field 2.022
 * @param birthplace field 2.020
 * @param citizenship field 2.021
 * @param sex field 2.024
 * @param race field 2.025
 * @param height field 2.027, feet and inches
 * @param weight field 2.029, pounds
 * @param eyes field 2.031
 * @param hair field 2.032
 * @param reason field 2.037
 */
public record Subject(
    long person,
    String name,
    String birthDate,
    String birthplace,
    String citizenship,
    String sex,
    String race,
    String height,
    String weight,
    String eyes,
    String hair,
    String reason) {

  public Subject {
    name = Defaults.orElse(name, "SPECIMEN,ADA");
    birthDate = Defaults.orElse(birthDate, "19880417");
    birthplace = Defaults.orElse(birthplace, "ME");
    citizenship = Defaults.orElse(citizenship, "US");
    sex = Defaults.orElse(sex, "F");
    race = Defaults.orElse(race, "U");
    height = Defaults.orElse(height, "507");
    weight = Defaults.orElse(weight, "142");
    eyes = Defaults.orElse(eyes, "BRO");
    hair = Defaults.orElse(hair, "GRY");
    reason = Defaults.orElse(reason, "HARBOUR PILOT LICENCE");
  }

  static Subject standard() {
    return of(0, null);
  }

  /** A subject of whom only fingers and name are given. */
  public static Subject of(long person, String name) {
    return new Subject(person, name, null, null, null, null, null, null, null, null, null, null);
  }
}
