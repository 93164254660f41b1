using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace EpisodePlanner.Data.Rows.Mapping;

internal sealed class ThingMapping(string json) : IEntityTypeConfiguration<ThingRow>
{
    public void Configure(EntityTypeBuilder<ThingRow> builder)
    {
        AggregateMapping.Share(builder, "things");
        builder.HasKey(row => new { row.Workshop, row.Kind, row.Id });
        builder.Property(row => row.Body).HasColumnType(json);
    }
}
