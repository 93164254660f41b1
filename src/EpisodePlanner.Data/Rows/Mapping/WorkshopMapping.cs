using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace EpisodePlanner.Data.Rows.Mapping;

internal sealed class WorkshopMapping : IEntityTypeConfiguration<WorkshopRow>
{
    public void Configure(EntityTypeBuilder<WorkshopRow> builder)
    {
        builder.ToTable("workshops");
        builder.HasKey(row => row.Id);
        builder.Property(row => row.Version).IsConcurrencyToken();
    }
}
