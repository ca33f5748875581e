package io.github.seamstead.api.doubt;

import io.github.seamstead.api.job.Aggregate;
import io.github.seamstead.api.job.JobDocument;
import io.github.seamstead.api.job.SoilSample;
import java.util.ArrayList;
import java.util.List;

/** A price that a job states. */
record Price(String path, double amount) {

  static List<Price> of(JobDocument job) {
    List<Price> prices = new ArrayList<>();
    for (int i = 0; i < job.soils().size(); i++) {
      String path = "soils[" + i + "].pricePerTonne";
      SoilSample soil = job.soils().get(i);
      soil.pricePerTonne().ifPresent(price -> prices.add(new Price(path, price)));
    }
    for (int i = 0; i < job.aggregates().size(); i++) {
      String path = "aggregates[" + i + "].pricePerTonne";
      Aggregate aggregate = job.aggregates().get(i);
      aggregate.pricePerTonne().ifPresent(price -> prices.add(new Price(path, price)));
    }
    return prices;
  }
}
